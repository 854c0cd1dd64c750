package org.honorsdue.determination.law;

import java.util.List;

/** One way to an award: every clause of it must be met. */
public record Route(String title, List<Clause> clauses) {
    public Route {
        clauses = List.copyOf(clauses);
    }
}
