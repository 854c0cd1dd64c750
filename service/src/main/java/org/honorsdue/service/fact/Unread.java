package org.honorsdue.service.fact;

import org.honorsdue.service.paper.Entry;

/** Characters of an entry that could not be read; the ends are as in {@link Origin.OnPaper}. */
public record Unread(int paper, Entry entry, int start, int end, String text) {}
