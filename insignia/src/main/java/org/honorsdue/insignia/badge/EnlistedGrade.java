package org.honorsdue.insignia.badge;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The enlisted grades of 1942 to 1948 that wore chevrons: bars above, arcs below, a T or a lozenge (from memory). */
public enum EnlistedGrade {
    PRIVATE_FIRST_CLASS("Private First Class", 1, 0, Mark.NONE, Set.of("pfc")),
    TECHNICIAN_FIFTH_GRADE("Technician Fifth Grade", 2, 0, Mark.LETTER_T, Set.of("tec5", "t5", "tech5", "tec5th")),
    CORPORAL("Corporal", 2, 0, Mark.NONE, Set.of("cpl")),
    TECHNICIAN_FOURTH_GRADE("Technician Fourth Grade", 3, 0, Mark.LETTER_T, Set.of("tec4", "t4", "tech4", "tec4th")),
    SERGEANT("Sergeant", 3, 0, Mark.NONE, Set.of("sgt")),
    TECHNICIAN_THIRD_GRADE("Technician Third Grade", 3, 1, Mark.LETTER_T, Set.of("tec3", "t3", "tech3", "tec3rd")),
    STAFF_SERGEANT("Staff Sergeant", 3, 1, Mark.NONE, Set.of("ssgt", "staffsgt")),
    TECHNICAL_SERGEANT("Technical Sergeant", 3, 2, Mark.NONE, Set.of("tsgt", "techsgt")),
    FIRST_SERGEANT("First Sergeant", 3, 3, Mark.LOZENGE, Set.of("1stsgt", "1sgt")),
    MASTER_SERGEANT("Master Sergeant", 3, 3, Mark.NONE, Set.of("msgt", "mstrsgt"));

    private final String words;
    private final int bars;
    private final int arcs;
    private final Mark mark;
    private final Set<String> typed;

    EnlistedGrade(String words, int bars, int arcs, Mark mark, Set<String> typed) {
        this.words = words;
        this.bars = bars;
        this.arcs = arcs;
        this.mark = mark;
        this.typed = typed;
    }

    /** What stands between bars and arcs. */
    public enum Mark {
        NONE,
        LETTER_T,
        LOZENGE
    }

    /** The full name of the grade. */
    public String words() {
        return words;
    }

    int bars() {
        return bars;
    }

    int arcs() {
        return arcs;
    }

    Mark mark() {
        return mark;
    }

    /** The grade as papers type it: {@code Tec 5}, {@code S/Sgt}, {@code Staff Sergeant}. */
    public static Optional<EnlistedGrade> named(String grade) {
        String plain = grade.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
        for (EnlistedGrade known : values()) {
            if (known.typed.contains(plain)
                    || known.words.toLowerCase(Locale.ROOT).replace(" ", "").equals(plain)) {
                return Optional.of(known);
            }
        }
        return Optional.empty();
    }
}
