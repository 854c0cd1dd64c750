package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.COMPONENT;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.SPECIALTY;
import static org.honorsdue.reading.token.SenseKind.TERM;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.School;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.Specialty;
import org.jspecify.annotations.Nullable;

/** Entries about the service: unit, specialty, reason, pay, schools, earlier service, day of birth. */
final class ServiceEntries {
    private ServiceEntries() {}

    static void organization(EntryText entry, UnitReader units) {
        if (entry.saysNothing()) {
            return;
        }
        String designation = entry.text().strip();
        entry.pieces().forEach(ServiceEntries::takeAsTyped);
        UnitReader.Found found = units.read(designation);
        if (!entry.pieces().isEmpty()) {
            entry.pieces().get(0).noteUnit(found.meaning(), found.certainty(), found.notes());
        }
        entry.add(new Assignment(
                designation, found.units(), Optional.empty(), Optional.empty(), true, entry.whole(found.certainty())));
        PersonEntries.women(entry);
    }

    private static void takeAsTyped(Piece piece) {
        if (piece.isPhrase() || piece.isDate()) {
            piece.take();
        } else {
            piece.take(piece.text());
        }
    }

    /** Title and number in either order; several specialties on one line are several facts. */
    static void specialty(EntryText entry) {
        if (entry.saysNothing()) {
            return;
        }
        var title = new ArrayList<Piece>();
        Piece number = null;
        for (Piece piece : entry.pieces()) {
            boolean isNumber = piece.isNumber() && piece.figures() >= 3 && piece.figures() <= 4 && !piece.isOrdinal();
            if (isNumber && number == null) {
                number = piece;
                piece.take("specification serial number " + digits(piece));
            } else if (isNumber || piece.afterSlash() && number != null && !title.isEmpty()) {
                specialty(entry, title, number);
                title.clear();
                number = isNumber ? piece.take("specification serial number " + digits(piece)) : null;
                if (!isNumber) {
                    title.add(piece);
                }
            } else {
                title.add(piece);
            }
        }
        specialty(entry, title, number);
    }

    /** Figures as typed, a slip of the machine put right. */
    private static String digits(Piece piece) {
        return ("0000" + piece.number())
                .substring(4 + Integer.toString(piece.number()).length() - piece.figures());
    }

    private static void specialty(EntryText entry, List<Piece> title, @Nullable Piece number) {
        var words = title.stream()
                .filter(piece -> !(piece.is(LINK)
                        || piece.text().equalsIgnoreCase("MOS")
                        || piece.text().equalsIgnoreCase("SSN")))
                .toList();
        title.forEach(piece -> {
            piece.settle(SPECIALTY);
            takeAsTyped(piece);
        });
        String typed = words.isEmpty()
                ? ""
                : entry.typed(words.get(0).start(), words.get(words.size() - 1).end());
        if (number == null && typed.isEmpty()) {
            return;
        }
        Optional<String> digits = Optional.ofNullable(number).map(ServiceEntries::digits);
        String fromTable = digits.flatMap(figures -> lookUp(entry, figures))
                .filter(MilitarySpecialty::safeToDecode)
                .map(MilitarySpecialty::title)
                .orElse("");
        var all = new ArrayList<>(words);
        if (number != null) {
            all.add(number);
        }
        int start = all.stream().mapToInt(Piece::start).min().orElse(0);
        int end = all.stream().mapToInt(Piece::end).max().orElse(0);
        entry.add(new Specialty(
                entry.paper(),
                digits,
                typed.isEmpty() ? fromTable : typed,
                entry.basis(start, end, number == null ? Certainty.PLAIN : number.certainty())));
    }

    private static Optional<MilitarySpecialty> lookUp(EntryText entry, String figures) {
        return entry.reference()
                .specialty(figures)
                .or(() -> figures.length() == 4 && figures.startsWith("0")
                        ? entry.reference().specialty(figures.substring(1))
                        : Optional.empty());
    }

    /** The words as typed, and the regulation cited first. */
    static void reason(EntryText entry) {
        if (entry.saysNothing()) {
            return;
        }
        var pieces = entry.pieces();
        Optional<String> authority = Optional.empty();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (authority.isEmpty() && piece.is(TERM, "regulation") && i + 2 < pieces.size()) {
                Piece number = pieces.get(i + 1);
                Piece part = pieces.get(i + 2);
                if (number.isNumber() && part.isNumber() && number.figures() == 3 && part.figures() <= 3) {
                    authority = Optional.of("AR " + number.number() + "-" + part.number());
                    number.take(number.text());
                    part.take(part.text());
                }
            }
            takeAsTyped(piece);
        }
        if (authority.isEmpty()) {
            pieces.stream()
                    .filter(piece -> piece.is(TERM, "regulation"))
                    .forEach(piece -> piece.doubt("the number of the regulation was not read", List.of()));
        }
        entry.add(new SeparationReason(entry.paper(), entry.text().strip(), authority, entry.whole(Certainty.PLAIN)));
    }

    /** The total, which is the larger of the amounts typed, or the one called total. */
    static void pay(EntryText entry) {
        if (entry.saysNothing()) {
            return;
        }
        Piece best = null;
        boolean labelled = false;
        boolean totalNext = false;
        for (Piece piece : entry.pieces()) {
            if (piece.is(TERM, "total")) {
                totalNext = true;
            } else if (piece.isNumber() && !labelled && piece.number() >= 50 && piece.number() <= 1000) {
                piece.take("$" + piece.number());
                if (totalNext) {
                    best = piece;
                    labelled = true;
                } else if (best == null || piece.number() > best.number()) {
                    best = piece;
                }
                totalNext = false;
            } else {
                takeAsTyped(piece);
            }
        }
        if (best != null) {
            entry.add(new MusteringOutPay(entry.paper(), best.number(), entry.basis(best)));
        }
    }

    /** Each school between commas, semicolons or line ends, as typed. */
    static void schools(EntryText entry) {
        if (entry.saysNothing()) {
            return;
        }
        var pieces = entry.pieces();
        int from = 0;
        for (int i = 0; i < pieces.size(); i++) {
            takeAsTyped(pieces.get(i));
            boolean last = i + 1 == pieces.size();
            if (last || pieces.get(i + 1).beginsAnew()) {
                int start = pieces.get(from).start();
                int end = pieces.get(i).end();
                entry.add(new School(entry.paper(), entry.typed(start, end), entry.basis(start, end, Certainty.PLAIN)));
                from = i + 1;
            }
        }
    }

    /** Earlier service: the component, and the dates it ran from and to. */
    static void priorService(EntryText entry) {
        if (entry.saysNothing()) {
            return;
        }
        Piece component = null;
        Piece from = null;
        Piece to = null;
        for (Piece piece : entry.pieces()) {
            if (piece.isDate() && piece.date() != null) {
                if (from == null) {
                    from = piece.take();
                } else if (to == null) {
                    to = piece.take();
                } else {
                    prior(entry, component, from, to);
                    component = null;
                    from = piece.take();
                    to = null;
                }
            } else if (piece.settle(COMPONENT)) {
                if (from != null) {
                    prior(entry, component, from, to);
                    from = null;
                    to = null;
                }
                component = piece.take();
            } else if (piece.isPhrase()) {
                piece.take();
            }
        }
        if (from != null || component != null) {
            prior(entry, component, from, to);
        }
    }

    private static void prior(EntryText entry, @Nullable Piece component, @Nullable Piece from, @Nullable Piece to) {
        var all = new ArrayList<Piece>();
        for (Piece piece : new Piece[] {component, from, to}) {
            if (piece != null) {
                all.add(piece);
            }
        }
        int start = all.stream().mapToInt(Piece::start).min().orElse(0);
        int end = all.stream().mapToInt(Piece::end).max().orElse(0);
        Certainty certainty = Certainty.PLAIN;
        for (Piece piece : all) {
            certainty = EntryText.worse(certainty, piece.certainty());
        }
        Optional<String> name =
                Optional.ofNullable(component).map(piece -> piece.sense().id());
        entry.add(new PriorService(
                entry.paper(),
                duty(name.orElse("")),
                name,
                Optional.ofNullable(from).map(Piece::date),
                Optional.ofNullable(to).map(Piece::date),
                entry.typed(start, end),
                entry.basis(start, end, certainty)));
    }

    private static PriorService.Duty duty(String component) {
        return switch (component) {
            case "Regular Army", "Army of the United States", "Women's Army Auxiliary Corps", "Women's Army Corps" ->
                PriorService.Duty.ACTIVE;
            case "Enlisted Reserve Corps", "Officers' Reserve Corps" -> PriorService.Duty.INACTIVE;
            default -> PriorService.Duty.NOT_SHOWN;
        };
    }

    /** The first date of the entry; null when there is none with a year. */
    static @Nullable Piece date(EntryText entry) {
        for (Piece piece : entry.pieces()) {
            if (piece.isDate()) {
                piece.take();
                if (piece.date() != null) {
                    return piece;
                }
            }
        }
        return null;
    }

    /** A birth of the years after 1945 was one of the century before. */
    static void birth(EntryText entry) {
        Piece piece = date(entry);
        if (piece == null || piece.date() == null) {
            return;
        }
        PartialDate born = piece.date();
        if (born.earliest().getYear() > 1935
                && !piece.text().contains(Integer.toString(born.earliest().getYear()))) {
            born = new PartialDate(
                    born.earliest().minusYears(100), born.latest().minusYears(100));
            piece.redate(born);
        }
        entry.add(new BirthDate(born, entry.basis(piece)));
    }
}
