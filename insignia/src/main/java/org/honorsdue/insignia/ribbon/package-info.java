/**
 * Ribbons with what is worn on them, and the rack. Start at {@link org.honorsdue.insignia.ribbon.RibbonRack}. Stripes
 * come from the published table, {@link org.honorsdue.reference.insignia.RibbonDesign}; devices are our own sketches in
 * their published size and order.
 */
@NullMarked
package org.honorsdue.insignia.ribbon;

import org.jspecify.annotations.NullMarked;
