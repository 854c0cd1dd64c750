/**
 * What was published: the awards, campaigns, theatres, places, badges, abbreviations, specialties, units and ribbons,
 * each row with the publication it comes from and how far its text was verified.
 *
 * <p>Start at {@link org.honorsdue.reference.Reference}, which loads and cross-checks every table once and refuses a
 * faulty one with all its faults together. {@link org.honorsdue.reference.Provenance} and
 * {@link org.honorsdue.reference.Citation} say where a row or a clause comes from. Depends on nothing else of ours.
 */
@NullMarked
package org.honorsdue.reference;

import org.jspecify.annotations.NullMarked;
