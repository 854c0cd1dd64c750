package org.honorsdue.service.fact;

import java.util.List;

/** Two sources that cannot both be right. */
public record Conflict(String says, List<Origin> origins) {
    public Conflict {
        origins = List.copyOf(origins);
    }
}
