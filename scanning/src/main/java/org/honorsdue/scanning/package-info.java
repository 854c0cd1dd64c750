/**
 * From a photograph, flatbed scan, PDF or photostat of a separation paper to entries ready for a person to confirm.
 * Start at {@link org.honorsdue.scanning.PaperScanner}. Uses {@code reading} for the vocabulary of the papers; decides
 * nothing about awards, and never changes a reading without saying so.
 */
@NullMarked
package org.honorsdue.scanning;

import org.jspecify.annotations.NullMarked;
