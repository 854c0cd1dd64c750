package org.honorsdue.service.fact;

import org.honorsdue.service.paper.Entry;

/**
 * The clerk typed that there is none: {@code None}, {@code N/A}, a row of dashes. Not the same as an entry left blank.
 */
public record NoneTyped(int paper, Entry entry, Basis basis) implements ServiceFact {}
