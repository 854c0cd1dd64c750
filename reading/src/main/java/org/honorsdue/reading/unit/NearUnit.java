package org.honorsdue.reading.unit;

import org.honorsdue.reference.unit.Unit;

/** A unit of the tables that is close to what was typed and not the same. */
public record NearUnit(Unit unit, String difference) {}
