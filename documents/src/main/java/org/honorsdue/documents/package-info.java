/**
 * What leaves the desk. {@link org.honorsdue.documents.findings} puts findings into JSON and text; {@link
 * org.honorsdue.documents.letter} writes the papers of a case; {@link org.honorsdue.documents.page} sets them as text or
 * HTML, {@link org.honorsdue.documents.pdf} as accessible PDF. Start at {@link
 * org.honorsdue.documents.letter.Correspondence} and {@link org.honorsdue.documents.Output}.
 */
@NullMarked
package org.honorsdue.documents;

import org.jspecify.annotations.NullMarked;
