/**
 * The service line: one man's service laid out in time, as a value that a terminal, a page or a drawing can show. Start at
 * {@link org.honorsdue.determination.line.ServiceLine}.
 */
@NullMarked
package org.honorsdue.determination.line;

import org.jspecify.annotations.NullMarked;
