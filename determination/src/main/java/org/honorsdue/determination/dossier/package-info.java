/**
 * One soldier's facts, prepared once in the shape in which the regulations ask for them: tours, time abroad by theatre
 * with certain and possible days, days at home, claims by award. Start at
 * {@link org.honorsdue.determination.dossier.Dossier}. Decides nothing.
 */
@NullMarked
package org.honorsdue.determination.dossier;

import org.jspecify.annotations.NullMarked;
