/** The command line: reads arguments, files and the clock, and hands everything else down. Start at {@link org.honorsdue.cli.Honors}. */
@NullMarked
package org.honorsdue.cli;

import org.jspecify.annotations.NullMarked;
