/**
 * Facts and law to findings, cross-checks and open questions. No I/O, no clock, nothing of ours but {@code service} and
 * {@code reference}.
 *
 * <p>Start at {@link org.honorsdue.determination.LawExaminer}, which prepares the facts ({@code dossier}), asks the rules
 * ({@code award}, held in the shapes of {@code law}) and gives findings ({@code finding}). The rules as held are the
 * {@link org.honorsdue.determination.LawBook}.
 */
@NullMarked
package org.honorsdue.determination;

import org.jspecify.annotations.NullMarked;
