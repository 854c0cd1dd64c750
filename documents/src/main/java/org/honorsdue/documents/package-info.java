/**
 * What leaves the desk. Start at {@link org.honorsdue.documents.findings.FindingsJson} for other programs and
 * {@link org.honorsdue.documents.findings.FindingsText} for the reader at a terminal.
 */
@NullMarked
package org.honorsdue.documents;

import org.jspecify.annotations.NullMarked;
