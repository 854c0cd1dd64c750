/**
 * Facts and law to findings, cross-checks and open questions. No I/O, no clock, nothing of ours but {@code service} and
 * {@code reference}.
 */
@NullMarked
package org.honorsdue.determination;

import org.jspecify.annotations.NullMarked;
