/** Findings as JSON and as plain text. */
@NullMarked
package org.honorsdue.documents.findings;

import org.jspecify.annotations.NullMarked;
