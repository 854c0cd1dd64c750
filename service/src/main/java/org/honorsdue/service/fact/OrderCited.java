package org.honorsdue.service.fact;

import org.honorsdue.service.paper.Entry;

/**
 * An order cited in an entry without an award of its own, as behind the campaigns: {@code Rhineland GO 33 WD 45}.
 *
 * @param entry the entry it stands in
 */
public record OrderCited(int paper, Entry entry, OrderReference order, Basis basis) implements ServiceFact {}
