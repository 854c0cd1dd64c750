/**
 * The law award by award, each rule written to be read against its regulation: the clauses come from the table by their
 * short names, the tests stand beneath. {@link org.honorsdue.determination.award.TheLaw} lists them all.
 */
@NullMarked
package org.honorsdue.determination.award;

import org.jspecify.annotations.NullMarked;
