/**
 * One file in, one soldier out: the casefile in YAML or JSON, with every fault found in it.
 * Start at {@link org.honorsdue.reading.casefile.CasefileFile}. Reads no typing: what stands in an entry is kept as it is.
 */
@NullMarked
package org.honorsdue.reading.casefile;

import org.jspecify.annotations.NullMarked;
