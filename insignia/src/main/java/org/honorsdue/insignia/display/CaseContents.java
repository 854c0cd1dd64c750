package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.badge.AviationRating;
import org.honorsdue.insignia.badge.BadgeDrawing;
import org.honorsdue.insignia.badge.MarksmanshipClass;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.medal.MedalDrawing;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;
import org.honorsdue.insignia.sleeve.SleeveInsigne;
import org.honorsdue.insignia.sleeve.SleeveInsignia;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.BadgeDesign;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;

/** Makes the pieces of a case out of findings and wishes, in the order of wear. */
final class CaseContents {
    private static final Inches SIXTEENTH = Inches.of(1, 16);
    /** Awards of which the Army authorized the ribbon alone. */
    private static final List<String> RIBBON_ONLY =
            List.of("philippine-defense-ribbon", "philippine-liberation-ribbon", "philippine-independence-ribbon");

    private static final List<String> CORDS =
            List.of("french-fourragere", "belgian-fourragere", "netherlands-orange-lanyard");

    private final Findings findings;
    private final CaseWish wish;
    private final InsigniaTables tables;
    private final BadgeDrawing badges;
    private final List<Piece> pieces = new ArrayList<>();

    private CaseContents(Findings findings, CaseWish wish, InsigniaTables tables) {
        this.findings = findings;
        this.wish = wish;
        this.tables = tables;
        this.badges = new BadgeDrawing(tables);
    }

    /** The pieces, those of one kind together and in the order of wear. */
    static List<Piece> of(Findings findings, CaseWish wish, InsigniaTables tables) {
        return new CaseContents(findings, wish, tables).gather();
    }

    private List<Piece> gather() {
        patches();
        findings.findings().stream()
                .filter(finding -> tables.wearOrder(finding.award()).isPresent())
                .sorted(Comparator.comparingInt(this::order))
                .forEach(this::medal);
        findings.findings().stream()
                .filter(finding -> tables.badge(finding.award()).isPresent())
                .sorted(Comparator.comparingInt(
                        finding -> tables.badge(finding.award()).orElseThrow().place()))
                .forEach(this::badge);
        ribbons();
        cords();
        int photographs = 0;
        int papers = 0;
        int plates = 0;
        int tags = 0;
        int flags = 0;
        for (Addition addition : wish.additions()) {
            if (addition instanceof Addition.Photograph print) {
                add(AddedPieces.photograph(++photographs, print));
            } else if (addition instanceof Addition.Paper paper) {
                add(AddedPieces.paper(++papers, paper));
            } else if (addition instanceof Addition.Nameplate plate) {
                add(AddedPieces.nameplate(++plates, plate));
            } else if (addition instanceof Addition.DogTags) {
                add(AddedPieces.dogTags(++tags));
            } else if (addition instanceof Addition.Chevrons chevrons) {
                add(chevrons(chevrons));
            } else if (addition instanceof Addition.Flag flag) {
                add(AddedPieces.flag(++flags, flag));
            }
        }
        return pieces.stream()
                .filter(piece -> !wish.leftOut().contains(piece.id()))
                .toList();
    }

    private Piece chevrons(Addition.Chevrons chevrons) {
        Drawing one = badges.chevrons(chevrons.grade());
        double gap = 0.25;
        Inches width = up(thousandths(2 * one.width() + gap));
        Inches height = up(thousandths(one.height()));
        var pair =
                new Drawing(2 * one.width() + gap, one.height(), List.of(one.at(0, 0), one.at(one.width() + gap, 0)));
        return new Piece(
                "chevrons",
                Kind.SLEEVE_BARS,
                "Chevrons, " + chevrons.grade().words(),
                width,
                height,
                fitted(pair, width, height),
                false,
                List.of(new Piece.Part(
                        "Pair of chevrons, %s, wartime pattern"
                                .formatted(chevrons.grade().words()),
                        2,
                        size(tables.badge("chevrons").orElseThrow().width(), height))),
                "",
                Grade.MEMORY);
    }

    private int order(Finding finding) {
        var order = tables.wearOrder(finding.award()).orElseThrow();
        int known = wish.rack().serviceOrder().indexOf(finding.award());
        int place = wish.rack().practice() == RackStyle.Practice.PRESENT ? order.present() : order.wartime();
        // An order of service medals that the user knows goes before the usual one, within their block.
        return order.block().ordinal() * 10_000 + (known < 0 ? 5_000 + place : known);
    }

    private void add(Piece piece) {
        pieces.add(piece);
    }

    private boolean isPending(Finding finding) {
        return wish.rack().placesFor().contains(finding.standing());
    }

    private boolean isIn(Finding finding) {
        return finding.standing() == Standing.AUTHORIZED || isPending(finding);
    }

    private void medal(Finding finding) {
        if (!isIn(finding) || RIBBON_ONLY.contains(finding.award()) || !MedalDrawing.has(finding.award(), tables)) {
            return;
        }
        List<WornDevice> worn = isPending(finding) ? List.of() : finding.devices();
        Inches width = MedalDrawing.width(finding.award(), worn, tables);
        Inches height = MedalDrawing.height(finding.award(), tables);
        Drawing drawing = isPending(finding)
                ? AddedPieces.place(width, height, finding.name())
                : MedalDrawing.of(finding.award(), worn, tables).orElseThrow();
        var parts = new ArrayList<Piece.Part>();
        parts.add(new Piece.Part(
                "Full-size medal with drape: " + finding.name(),
                1,
                size(tables.medal(finding.award()).orElseThrow().width(), height)));
        for (WornDevice device : worn) {
            parts.add(new Piece.Part("%s for the drape of it".formatted(words(device)), loopsOrCount(device), ""));
        }
        Grade grade = tables.medal(finding.award()).orElseThrow().provenance().grade();
        add(new Piece(
                finding.award(),
                Kind.MEDAL,
                finding.name(),
                up(width),
                up(height),
                fitted(drawing, up(width), up(height)),
                isPending(finding),
                parts,
                authority(finding),
                grade));
    }

    private void badge(Finding finding) {
        if (!isIn(finding)) {
            return;
        }
        String id = finding.award();
        switch (id) {
            case "expert-infantryman-badge" -> {
                // Only one of the two is worn, the combat badge before the other.
                if (findings.findings().stream()
                        .noneMatch(other -> other.award().equals("combat-infantryman-badge")
                                && other.standing() == Standing.AUTHORIZED)) {
                    badge(finding, Kind.BADGE, id, finding.name(), badges.of(id));
                }
            }
            case "parachutist-badge" ->
                badge(
                        finding,
                        Kind.BADGE,
                        id,
                        finding.name(),
                        Optional.of(badges.parachutist(count(finding, Device.BRONZE_STAR_ON_PARACHUTIST_BADGE.id()))));
            case "aviation-badge" ->
                badge(
                        finding,
                        Kind.BADGE,
                        id,
                        finding.name(),
                        AviationRating.named(finding.name()).map(badges::aviation));
            case "marksmanship-badge" -> marksmanship(finding);
            case "overseas-service-bars" ->
                badge(finding, Kind.SLEEVE_BARS, id, finding.name(), Optional.of(badges.overseasBars(finding.count())));
            case "service-stripes" ->
                badge(
                        finding,
                        Kind.SLEEVE_BARS,
                        id,
                        finding.name(),
                        Optional.of(badges.serviceStripes(finding.count())));
            case "driver-and-mechanic-badge" -> badge(finding, Kind.QUALIFICATION, id, finding.name(), badges.of(id));
            case "honorable-service-lapel-button" -> badge(finding, Kind.SMALL, id, finding.name(), badges.of(id));
            default -> badge(finding, Kind.BADGE, id, finding.name(), badges.of(id));
        }
    }

    private void badge(Finding finding, Kind kind, String id, String name, Optional<Drawing> drawn) {
        BadgeDesign design = tables.badge(finding.award()).orElseThrow();
        boolean place = isPending(finding) || drawn.isEmpty();
        Inches width = up(drawn.map(drawing -> thousandths(drawing.width())).orElse(design.width()));
        Inches height = up(drawn.map(drawing -> thousandths(drawing.height())).orElse(design.height()));
        var parts = new ArrayList<Piece.Part>();
        int count = kind == Kind.SLEEVE_BARS ? Math.max(1, finding.count()) : 1;
        parts.add(new Piece.Part(name, count, size(design.width(), design.height())));
        for (WornDevice device : finding.devices()) {
            if (!isPending(finding)) {
                parts.add(new Piece.Part(words(device) + " for it", device.count(), ""));
            }
        }
        add(new Piece(
                id,
                kind,
                name,
                width,
                height,
                place ? AddedPieces.place(width, height, name) : fitted(drawn.get(), width, height),
                isPending(finding),
                parts,
                authority(finding),
                design.provenance().grade()));
    }

    /** One badge for each class, its bars below it; what a bar says stands in the finding as {@code Expert: Rifle}. */
    private void marksmanship(Finding finding) {
        List<String> qualified = finding.devices().stream()
                .filter(device -> device.device().id().equals("qualification-bar"))
                .flatMap(device -> device.standsFor().stream())
                .toList();
        boolean any = false;
        for (int i = MarksmanshipClass.values().length - 1; i >= 0; i--) {
            MarksmanshipClass level = MarksmanshipClass.values()[i];
            List<String> bars = qualified.stream()
                    .filter(words -> MarksmanshipClass.named(words).equals(Optional.of(level)))
                    .map(words -> words.substring(words.indexOf(':') + 1).strip())
                    .map(CaseContents::lettered)
                    .limit(3)
                    .toList();
            boolean named = finding.name().contains(level.words());
            if (!bars.isEmpty() || named && qualified.isEmpty()) {
                any = true;
                marksmanship(finding, level, bars);
            }
        }
        if (!any) {
            badge(finding, Kind.QUALIFICATION, finding.award(), finding.name(), Optional.empty());
        }
    }

    private void marksmanship(Finding finding, MarksmanshipClass level, List<String> bars) {
        Drawing drawing = badges.marksmanship(level, bars);
        Inches width = up(thousandths(drawing.width()));
        Inches height = up(thousandths(drawing.height()));
        BadgeDesign design = tables.badge("marksmanship-badge").orElseThrow();
        var parts = new ArrayList<Piece.Part>();
        parts.add(new Piece.Part(
                "Marksmanship badge, %s".formatted(level.words()), 1, size(design.width(), design.height())));
        BadgeDesign bar = tables.badge("qualification-bar").orElseThrow();
        bars.forEach(
                says -> parts.add(new Piece.Part("Qualification bar " + says, 1, size(bar.width(), bar.height()))));
        String name = "Marksmanship badge, %s%s"
                .formatted(level.words(), bars.isEmpty() ? "" : ": " + String.join(", ", bars));
        add(new Piece(
                "marksmanship-badge-" + level.name().toLowerCase(Locale.ROOT),
                Kind.QUALIFICATION,
                name,
                width,
                height,
                isPending(finding) ? AddedPieces.place(width, height, name) : fitted(drawing, width, height),
                isPending(finding),
                parts,
                authority(finding),
                Grade.MEMORY));
    }

    /** What a bar can carry: capitals, figures and a few signs. */
    private static String lettered(String words) {
        return words.toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9 .'-]", " ")
                .replaceAll(" +", " ")
                .strip();
    }

    private void ribbons() {
        if (!wish.ribbons()) {
            return;
        }
        RibbonRack rack = RibbonRack.of(findings, wish.rack(), tables);
        ribbons(rack, rack.leftBreast(), "ribbon-rack", Kind.RIBBONS, "Ribbons");
        ribbons(rack, rack.rightBreast(), "unit-emblems", Kind.UNIT_EMBLEMS, "Unit awards");
    }

    private void ribbons(RibbonRack rack, List<List<RibbonRack.Worn>> rows, String id, Kind kind, String name) {
        if (rows.isEmpty()) {
            return;
        }
        Drawing drawing = rack.group(rows);
        var parts = new ArrayList<Piece.Part>();
        for (List<RibbonRack.Worn> row : rows) {
            for (RibbonRack.Worn worn : row) {
                parts.add(new Piece.Part(
                        (worn.design().framed() ? "Unit emblem in a gold frame: " : "Ribbon bar: ") + worn.says(),
                        1,
                        worn.design().framed() ? "1 7/16 x 9/16" : "1 3/8 x 3/8"));
            }
        }
        Inches width = up(thousandths(drawing.width()));
        Inches height = up(thousandths(drawing.height()));
        add(new Piece(id, kind, name, width, height, fitted(drawing, width, height), false, parts, "", Grade.TEXT));
    }

    private void cords() {
        for (Finding finding : findings.findings()) {
            if (CORDS.contains(finding.award()) && isIn(finding)) {
                BadgeDesign design = tables.badge("fourragere").orElseThrow();
                add(new Piece(
                        finding.award(),
                        Kind.CORD,
                        finding.name(),
                        design.width(),
                        design.height(),
                        isPending(finding)
                                ? AddedPieces.place(design.width(), design.height(), finding.name())
                                : badges.of(finding.award()).orElseThrow(),
                        isPending(finding),
                        List.of(new Piece.Part(finding.name() + ", coiled", 1, size(design.width(), design.height()))),
                        authority(finding),
                        Grade.MEMORY));
            }
            if (finding.award().equals("meritorious-unit-commendation")
                    && wish.rack().practice() == RackStyle.Practice.WARTIME
                    && finding.standing() == Standing.AUTHORIZED) {
                BadgeDesign design = tables.badge("meritorious-service-wreath").orElseThrow();
                add(new Piece(
                        finding.award(),
                        Kind.PATCH,
                        "Golden wreath of a meritorious service unit",
                        design.width(),
                        design.height(),
                        badges.of("meritorious-service-wreath").orElseThrow(),
                        false,
                        List.of(new Piece.Part(design.name(), 1, size(design.width(), design.height()))),
                        authority(finding),
                        design.provenance().grade()));
            }
        }
    }

    private void patches() {
        var units = new ArrayList<String>(wish.formerPatches());
        if (!wish.currentPatch().isEmpty()) {
            units.remove(wish.currentPatch());
            units.add(wish.currentPatch());
        }
        Optional<Finding> finding = findings.findings().stream()
                .filter(one -> one.award().equals("shoulder-sleeve-insignia"))
                .findFirst();
        boolean pending = finding.filter(this::isPending).isPresent();
        for (String unit : units) {
            SleeveInsigne insigne = SleeveInsignia.of(unit, tables);
            String sleeve = unit.equals(wish.currentPatch()) ? "left sleeve, last unit" : "right sleeve, former unit";
            Inches width = up(insigne.width());
            Inches height = up(insigne.height());
            Drawing drawing = pending ? AddedPieces.place(width, height, insigne.name()) : insigne.drawing();
            add(new Piece(
                    "patch-" + unit,
                    Kind.PATCH,
                    insigne.name() + " (" + sleeve + ")",
                    width,
                    height,
                    fitted(drawing, width, height),
                    pending,
                    List.of(new Piece.Part(
                            "Shoulder sleeve insigne, %s, wartime pattern".formatted(insigne.name()),
                            1,
                            size(insigne.width(), insigne.height()))),
                    "",
                    insigne.provenance().grade()));
        }
        if (units.isEmpty() && finding.isPresent() && isIn(finding.get())) {
            Inches side = Inches.of(5, 2);
            add(new Piece(
                    "patch-unit-to-be-named",
                    Kind.PATCH,
                    "Sleeve insigne, unit to be named",
                    side,
                    side,
                    AddedPieces.place(side, side, "sleeve insigne"),
                    true,
                    List.of(),
                    authority(finding.get()),
                    Grade.MEMORY));
        }
    }

    private static String authority(Finding finding) {
        return finding.grounds().stream()
                .filter(ground -> ground.verdict() == Verdict.MET)
                .map(ground -> ground.authority().text())
                .findFirst()
                .orElse("");
    }

    private static int count(Finding finding, String device) {
        return finding.devices().stream()
                .filter(one -> one.device().id().equals(device))
                .mapToInt(WornDevice::count)
                .sum();
    }

    private static String words(WornDevice device) {
        if (device.device() == Device.GOOD_CONDUCT_CLASP) {
            return "Good Conduct clasp with %d loops".formatted(device.count());
        }
        String id = device.device().id().replace('-', ' ');
        return Character.toUpperCase(id.charAt(0)) + id.substring(1);
    }

    private static int loopsOrCount(WornDevice device) {
        return device.device() == Device.GOOD_CONDUCT_CLASP ? 1 : device.count();
    }

    private static String size(Inches width, Inches height) {
        return width.text() + " x " + height.text();
    }

    /** A drawn length as thousandths of an inch. */
    private static Inches thousandths(double inches) {
        return Inches.of(Math.round(inches * 1000), 1000);
    }

    /** Up to the next sixteenth, so that every place can be found on a rule. */
    static Inches up(Inches length) {
        Inches near = length.nearest(SIXTEENTH);
        return near.compareTo(length) < 0 ? near.plus(SIXTEENTH) : near;
    }

    /** A drawing centred on a sheet that is a little larger. */
    static Drawing fitted(Drawing drawing, Inches width, Inches height) {
        return new Drawing(
                width.decimal(), height.decimal(), List.of(drawing.centred(width.decimal() / 2, height.decimal() / 2)));
    }
}
