package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.honorsdue.documents.page.Block;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;

/**
 * The service as a line in time: years along the top, the service under them, the time overseas and in captivity
 * darker, the campaigns of the paper below at their published dates. Shade and position tell everything, so that it can
 * be read in black and white.
 */
final class ServiceLineDrawing {
    private static final double WIDTH = 6.4;
    private static final double LEFT = 1.28;
    private static final double RIGHT = 6.36;
    private static final double LANE = 0.165;
    private static final int INK = 0x1D262E;
    private static final int QUIET = 0x6A7077;
    private static final int RULE = 0xB9B09A;
    private static final int PALE = 0xD8D2C2;
    private static final int ACCENT = 0x7F231E;

    private final Dossier dossier;
    private final DateSpan extent;
    private final List<Mark> marks = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private double y = 0.3;

    private ServiceLineDrawing(Dossier dossier, DateSpan extent) {
        this.dossier = dossier;
        this.extent = extent;
    }

    /** Empty when fewer than two days of the service are known. */
    static Optional<Block.Drawing> of(Dossier dossier) {
        var days = known(dossier).sorted().toList();
        if (days.size() < 2 || days.get(0).equals(days.get(days.size() - 1))) {
            return Optional.empty();
        }
        var extent = new DateSpan(
                days.get(0).withDayOfYear(1),
                days.get(days.size() - 1).plusYears(1).withDayOfYear(1));
        return Optional.of(new ServiceLineDrawing(dossier, extent).draw());
    }

    private static Stream<LocalDate> known(Dossier dossier) {
        return Stream.concat(
                        dossier.facts().every(Tour.class).stream()
                                .flatMap(tour -> Stream.concat(tour.entered().stream(), tour.separated().stream())),
                        dossier.facts().every(Death.class).stream().flatMap(death -> death.date().stream()))
                .filter(PartialDate::isDay)
                .map(PartialDate::earliest);
    }

    private Block.Drawing draw() {
        years();
        lane("In the service", service(), INK, 0.085);
        lane("Overseas", overseas(), ACCENT, 0.12);
        lane("Prisoner", captive(), INK, 0.12);
        for (var claim : dossier.facts().every(CampaignClaim.class)) {
            dossier.reference()
                    .campaign(claim.campaign())
                    .flatMap(campaign -> campaign.ground().intersection(extent))
                    .ifPresent(span -> lane(
                            dossier.reference()
                                    .campaign(claim.campaign())
                                    .orElseThrow()
                                    .name(),
                            List.of(span),
                            QUIET,
                            0.06));
        }
        wounds();
        double height = y + 0.02;
        var ground = new ArrayList<Mark>();
        for (int year = extent.first().getYear(); year <= extent.last().getYear(); year++) {
            double x = x(LocalDate.of(year, 1, 1));
            ground.add(Mark.area(Outline.rectangle(x, 0.2, 0.004, height - 0.2), RULE));
        }
        ground.addAll(marks);
        String said = "The service in time. " + String.join(". ", words) + ".";
        return new Block.Drawing(
                Svg.of(new Drawing(WIDTH, height, ground), said, "").text(), said);
    }

    private void years() {
        for (int year = extent.first().getYear(); year < extent.last().getYear(); year++) {
            double middle = (x(LocalDate.of(year, 1, 1)) + x(LocalDate.of(year + 1, 1, 1))) / 2;
            marks.add(new Mark.Words(
                    Integer.toString(year), middle, 0.14, 0.125, Mark.Anchor.MIDDLE, Mark.Face.REGULAR, QUIET));
        }
    }

    private void lane(String caption, List<DateSpan> spans, int rgb, double thickness) {
        if (spans.isEmpty()) {
            return;
        }
        double middle = y + LANE / 2;
        marks.add(new Mark.Words(caption, LEFT - 0.1, middle + 0.04, 0.118, Mark.Anchor.END, Mark.Face.REGULAR, INK));
        marks.add(Mark.area(Outline.rectangle(LEFT, middle - 0.0025, RIGHT - LEFT, 0.005), PALE));
        for (var span : spans) {
            double from = x(span.first());
            double to = Math.max(x(span.last()), from + 0.03);
            marks.add(Mark.area(Outline.rectangle(from, middle - thickness / 2, to - from, thickness), rgb));
            words.add("%s: %s to %s".formatted(caption, Wording.day(span.first()), Wording.day(span.last())));
        }
        y += LANE;
    }

    private List<DateSpan> service() {
        var ends = dossier.facts().every(Death.class).stream()
                .flatMap(death -> death.date().stream())
                .map(PartialDate::latest)
                .min(Comparator.naturalOrder());
        return dossier.facts().every(Tour.class).stream()
                .flatMap(tour -> span(
                        tour.entered(),
                        tour.separated().map(PartialDate::latest).or(() -> ends)))
                .toList();
    }

    private List<DateSpan> overseas() {
        return dossier.facts().every(OverseasStay.class).stream()
                .flatMap(stay -> span(
                        stay.departed().or(stay::arrived),
                        stay.returned().or(stay::left).map(PartialDate::latest)))
                .toList();
    }

    private List<DateSpan> captive() {
        return dossier.facts().every(Captivity.class).stream()
                .flatMap(time -> span(time.from(), time.to().map(PartialDate::latest)))
                .toList();
    }

    private Stream<DateSpan> span(Optional<PartialDate> from, Optional<LocalDate> to) {
        if (from.isEmpty() || to.isEmpty() || to.get().isBefore(from.get().earliest())) {
            return Stream.empty();
        }
        return new DateSpan(from.get().earliest(), to.get()).intersection(extent).stream();
    }

    private void wounds() {
        var days = dossier.facts().every(Wound.class).stream()
                .flatMap(wound -> wound.date().stream())
                .filter(PartialDate::isDay)
                .map(PartialDate::earliest)
                .filter(extent::contains)
                .sorted()
                .toList();
        lane("Wounded", days.stream().map(day -> new DateSpan(day, day)).toList(), ACCENT, 0.14);
    }

    private double x(LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(extent.first(), day)
                / ChronoUnit.DAYS.between(extent.first(), extent.last());
        return LEFT + share * (RIGHT - LEFT);
    }
}
