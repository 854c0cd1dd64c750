/** Measured, never tested: speed and memory. How to run them and what they gave: {@code benchmarks/README.md}. */
@NullMarked
package org.honorsdue.benchmarks;

import org.jspecify.annotations.NullMarked;
