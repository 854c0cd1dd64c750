/**
 * The evaluation set: blank forms drawn from the geometry, invented soldiers typed on them with open typewriter faces,
 * the wear of eighty years, and the measurements. Start at {@link
 * org.honorsdue.scanning.evaluation.Evaluation}. Every soldier, unit and address here is invented.
 */
package org.honorsdue.scanning.evaluation;
