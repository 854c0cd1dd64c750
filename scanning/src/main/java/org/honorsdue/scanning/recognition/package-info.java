/** Characters from pixels, through Tesseract, and where its language data is kept. */
@NullMarked
package org.honorsdue.scanning.recognition;

import org.jspecify.annotations.NullMarked;
