/**
 * One document, three ways out: the same blocks as accessible HTML (and through the press as PDF) and as plain text.
 * Start at {@link org.honorsdue.documents.page.Page}.
 */
@NullMarked
package org.honorsdue.documents.page;

import org.jspecify.annotations.NullMarked;
