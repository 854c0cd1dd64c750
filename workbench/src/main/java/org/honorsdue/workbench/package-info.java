/**
 * The whole job in a browser, served from the user's own machine. Start at {@link org.honorsdue.workbench.Workbench}.
 *
 * <p>Pages are compiled templates ({@code src/main/jte}); each group of pages is one class here that names its routes.
 * Nothing here decides: it asks {@code reading} and {@code determination} anew at each change. No request ever goes to
 * another host, and {@link org.honorsdue.workbench.Guard} lets no page of another site act here.
 */
@NullMarked
package org.honorsdue.workbench;

import org.jspecify.annotations.NullMarked;
