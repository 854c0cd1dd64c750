/** HTML to tagged PDF with the project's own faces embedded. Start at {@link org.honorsdue.documents.pdf.Press}. */
@NullMarked
package org.honorsdue.documents.pdf;

import org.jspecify.annotations.NullMarked;
