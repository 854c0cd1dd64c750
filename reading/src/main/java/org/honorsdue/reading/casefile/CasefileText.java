package org.honorsdue.reading.casefile;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Leg;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/**
 * Writes a casefile as the YAML that {@link CasefileFile} reads: what is read back equals what was written. Every text
 * is quoted, so that no clerk's characters can mean anything to YAML. The same casefile gives the same characters.
 */
public final class CasefileText {
    private final StringBuilder out = new StringBuilder(2048);

    private CasefileText() {}

    public static String write(Casefile casefile) {
        var text = new CasefileText();
        text.soldier(casefile);
        text.out.append("papers:").append(casefile.papers().isEmpty() ? " []\n" : "\n");
        casefile.papers().forEach(text::paper);
        text.out.append("evidence:").append(casefile.evidence().isEmpty() ? " []\n" : "\n");
        casefile.evidence().forEach(text::evidence);
        return text.out.toString();
    }

    private void soldier(Casefile casefile) {
        if (casefile.name().isEmpty() && casefile.sex().isEmpty()) {
            return;
        }
        out.append("soldier:\n");
        casefile.name().ifPresent(name -> line("  name", name));
        casefile.sex().ifPresent(sex -> line("  sex", sex.name().toLowerCase(Locale.ROOT)));
    }

    private void paper(Paper paper) {
        line("  - form", paper.formAsNamed());
        out.append("    entries:").append(paper.entries().isEmpty() ? " {}\n" : "\n");
        paper.entries().forEach((entry, typed) -> {
            if (entry == Entry.SERVICE_OUTSIDE_US && !paper.legs().isEmpty()) {
                out.append("      ").append(entry.key()).append(":\n");
                paper.legs().forEach(this::leg);
            } else {
                entry(entry, typed);
            }
        });
    }

    private void entry(Entry entry, Typed typed) {
        if (typed instanceof Typed.Text text) {
            line("      " + entry.key(), text.text());
        } else if (typed instanceof Typed.Illegible) {
            line("      " + entry.key(), "[illegible]");
        } else if (typed instanceof Typed.Blank) {
            out.append("      ").append(entry.key()).append(":\n");
        }
    }

    private void leg(Leg leg) {
        out.append("        - { departed: ")
                .append(quoted(leg.departed()))
                .append(", destination: ")
                .append(quoted(leg.destination()))
                .append(", arrived: ")
                .append(quoted(leg.arrived()))
                .append(" }\n");
    }

    private void evidence(Evidence evidence) {
        line("  - kind", evidence.kind());
        if (evidence instanceof Evidence.Order order) {
            line("    award", order.award());
            line("    reference", order.reference());
            date("    date", order.date());
            if (order.heroism()) {
                out.append("    heroism: true\n");
            }
        } else if (evidence instanceof Evidence.UnitAssignment assignment) {
            line("    unit", assignment.unit());
            date("    from", assignment.from());
            date("    to", assignment.to());
        } else if (evidence instanceof Evidence.Station station) {
            line("    place", station.place());
            date("    from", station.from());
            date("    to", station.to());
        } else if (evidence instanceof Evidence.HospitalAdmission admission) {
            line("    cause", word(admission.cause()));
            date("    date", admission.date());
            line("    diagnosis", admission.diagnosis());
        } else if (evidence instanceof Evidence.Captivity captivity) {
            date("    from", captivity.from());
            date("    to", captivity.to());
            line("    place", captivity.place());
        } else if (evidence instanceof Evidence.UnitCredit credit) {
            line("    unit", credit.unit());
            line("    award", credit.award());
            line("    reference", credit.reference());
            date("    from", credit.from());
            date("    to", credit.to());
        } else if (evidence instanceof Evidence.Assault assault) {
            line("    campaign", assault.campaign());
            line("    means", assault.means());
            date("    date", assault.date());
        } else if (evidence instanceof Evidence.Conduct conduct) {
            line("    character", conduct.character());
            line("    efficiency", conduct.efficiency());
            number("    lost_days", conduct.lostDays());
            number("    convictions", conduct.convictions());
        } else if (evidence instanceof Evidence.Death death) {
            date("    date", death.date());
            line("    manner", word(death.manner()));
        } else if (evidence instanceof Evidence.Statement statement) {
            line("    by", statement.by());
            line("    says", statement.says());
        }
        line("    source", evidence.source());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void date(String key, Optional<PartialDate> date) {
        line(key, date.map(PartialDate::toString));
    }

    private void number(String key, OptionalInt number) {
        number.ifPresent(value -> out.append(key).append(": ").append(value).append('\n'));
    }

    private void line(String key, Optional<String> value) {
        value.ifPresent(text -> line(key, text));
    }

    private void line(String key, String value) {
        out.append(key).append(": ").append(quoted(value)).append('\n');
    }

    /** In double quotes, with the escapes that YAML and JSON share. */
    private static String quoted(String text) {
        var quoted = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> {
                    boolean plain = letter >= ' ' && letter < 0x7F
                            || letter >= 0xA0
                                    && letter < 0xFFFE
                                    && letter != 0xFEFF
                                    && letter != 0x2028
                                    && letter != 0x2029;
                    if (plain) {
                        quoted.append(letter);
                    } else {
                        quoted.append("\\u%04x".formatted((int) letter));
                    }
                }
            }
        }
        return quoted.append('"').toString();
    }
}
