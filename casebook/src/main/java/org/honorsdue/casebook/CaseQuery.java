package org.honorsdue.casebook;

import java.util.Optional;

/**
 * Which cases to list.
 *
 * @param words each word must be found in one of the terms; empty lists all
 * @param field look only there, when given
 * @param stage only these, when given
 * @param removed list the removed ones instead
 */
public record CaseQuery(
        String words, Optional<SearchTerm.Field> field, Optional<Stage> stage, boolean removed, int offset, int limit) {
    public CaseQuery {
        if (offset < 0 || limit < 1 || limit > 1000) {
            throw new IllegalArgumentException(
                    "A list starts at 0 or later and shows 1 to 1000 cases, not %d from %d.".formatted(limit, offset));
        }
    }

    public static CaseQuery all() {
        return new CaseQuery("", Optional.empty(), Optional.empty(), false, 0, 1000);
    }
}
