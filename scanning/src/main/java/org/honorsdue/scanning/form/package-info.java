/**
 * The printed forms: which boxes they have, where, and how a ruled page is told to be one of them. Start at {@link
 * org.honorsdue.scanning.form.FormLayout}. Knows no picture format and no recognition.
 */
@NullMarked
package org.honorsdue.scanning.form;

import org.jspecify.annotations.NullMarked;
