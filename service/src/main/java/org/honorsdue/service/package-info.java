/**
 * The soldier as values: {@link org.honorsdue.service.paper} holds what was typed, letter by letter;
 * {@link org.honorsdue.service.evidence} what is known from elsewhere; {@link org.honorsdue.service.fact} what both
 * mean once read. Nothing here reads, decides, or knows a clock.
 *
 * <p>Start at {@link org.honorsdue.service.Casefile} (input) and {@link org.honorsdue.service.fact.ServiceFacts} (read).
 */
@NullMarked
package org.honorsdue.service;

import org.jspecify.annotations.NullMarked;
