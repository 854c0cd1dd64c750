package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.display.Breach.Rule;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.ClearDepth;
import org.honorsdue.reference.insignia.DisplayRule;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/** Holds a finished plan against the rules of the trade and the order of wear. */
final class CaseRules {
    /** Play between the glass and the highest thing (trade practice, from memory). */
    private static final Inches PLAY = Inches.of(1, 8);

    private final CaseWish wish;
    private final InsigniaTables tables;
    private final List<Placed> placed;
    private final List<Breach> breaches = new ArrayList<>();

    private CaseRules(CaseWish wish, InsigniaTables tables, List<Placed> placed) {
        this.wish = wish;
        this.tables = tables;
        this.placed = placed;
    }

    static List<Breach> of(CaseWish wish, InsigniaTables tables, List<Placed> placed, List<String> order) {
        var rules = new CaseRules(wish, tables, placed);
        rules.margins();
        rules.clearSpace();
        rules.order(order);
        rules.side();
        rules.balance();
        rules.depth();
        return rules.breaches;
    }

    private void add(Rule rule, String says, Grade grade, String... pieces) {
        breaches.add(new Breach(rule, says, List.of(pieces), grade));
    }

    private void margins() {
        Box opening = new Box(Inches.ZERO, Inches.ZERO, wish.width(), wish.height());
        // Marks of a rule can round a piece a sixteenth over the line.
        Box area = CaseLayout.area(opening, tables).grown(Inches.of(1, 16));
        for (Placed one : placed) {
            if (!one.box().liesWithin(area)) {
                add(
                        Rule.MARGIN,
                        "%s lies nearer to the frame than the usual %s in at the sides and above and %s in below. Move it"
                                        .formatted(
                                                one.piece().name(),
                                                rule("margin-side").length().text(),
                                                rule("margin-bottom").length().text())
                                + " inwards or take a larger frame.",
                        rule("margin-side").provenance().grade(),
                        one.piece().id());
            }
        }
    }

    private void clearSpace() {
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                Placed one = placed.get(i);
                Placed other = placed.get(j);
                Inches gap = one.box().gapTo(other.box());
                DisplayRule first = rule(one.piece().kind().clear());
                DisplayRule second = rule(other.piece().kind().clear());
                boolean medals =
                        one.piece().kind() == Kind.MEDAL && other.piece().kind() == Kind.MEDAL;
                DisplayRule wanted = medals || first.length().isLongerThan(second.length()) ? first : second;
                // Rounding to sixteenths on both sides is no breach.
                if (gap.plus(Inches.of(1, 8)).compareTo(wanted.length()) < 0) {
                    add(
                            Rule.CLEAR_SPACE,
                            "Between %s and %s are %s in; %s in are usual."
                                    .formatted(
                                            one.piece().name(),
                                            other.piece().name(),
                                            gap.text(),
                                            wanted.length().text()),
                            wanted.provenance().grade(),
                            one.piece().id(),
                            other.piece().id());
                }
            }
        }
    }

    /** Read row by row from the viewer's left, medals have to come in the order of wear. */
    private void order(List<String> order) {
        var medals =
                placed.stream().filter(one -> one.piece().kind() == Kind.MEDAL).toList();
        for (Placed one : medals) {
            for (Placed other : medals) {
                if (order.indexOf(one.piece().id())
                                < order.indexOf(other.piece().id())
                        && readsAfter(one, other)) {
                    add(
                            Rule.ORDER,
                            "%s is worn before %s and has to stand above it or to its left, as the viewer sees it."
                                    .formatted(one.piece().name(), other.piece().name()),
                            Grade.TEXT,
                            one.piece().id(),
                            other.piece().id());
                }
            }
        }
    }

    /** Whether one stands in a lower row, or in the same row further right. Rows share at least half their height. */
    private static boolean readsAfter(Placed one, Placed other) {
        Inches shared = one.box().foot().min(other.box().foot()).minus(one.y().max(other.y()));
        boolean sameRow = shared.times(2)
                .isLongerThan(one.piece().height().min(other.piece().height()));
        return sameRow ? one.x().isLongerThan(other.x()) : one.y().isLongerThan(other.y());
    }

    private void side() {
        for (Placed emblems : placed) {
            for (Placed ribbons : placed) {
                if (emblems.piece().kind() == Kind.UNIT_EMBLEMS
                        && ribbons.piece().kind() == Kind.RIBBONS
                        && emblems.box().middle().isLongerThan(ribbons.box().middle())) {
                    add(
                            Rule.SIDE,
                            "Unit awards are worn on the right breast: put them to the left of the other ribbons, as the"
                                    + " viewer sees it.",
                            Grade.MEMORY,
                            emblems.piece().id(),
                            ribbons.piece().id());
                }
            }
        }
    }

    private void balance() {
        double weight = 0;
        double moment = 0;
        for (Placed one : placed) {
            double area = one.piece().width().decimal() * one.piece().height().decimal();
            weight += area;
            moment += area * (one.box().middle().decimal() - wish.width().half().decimal());
        }
        if (weight == 0) {
            return;
        }
        double off = moment / weight;
        DisplayRule rule = rule("balance");
        if (Math.abs(off) > rule.length().decimal()) {
            add(
                    Rule.BALANCE,
                    "The weight of the case lies %s in to the %s of its middle. Move something to the other side."
                            .formatted(
                                    Inches.of(Math.round(Math.abs(off) * 16), 16)
                                            .text(),
                                    off > 0 ? "right" : "left"),
                    rule.provenance().grade());
        }
    }

    private void depth() {
        Inches need = Inches.ZERO;
        Placed deepest = null;
        ClearDepth row = null;
        for (Placed one : placed) {
            ClearDepth wanted = tables.depth(one.piece().kind().depth()).orElseThrow();
            if (wanted.depth().isLongerThan(need)) {
                need = wanted.depth();
                deepest = one;
                row = wanted;
            }
        }
        if (deepest != null && row != null && need.plus(PLAY).isLongerThan(wish.depth())) {
            add(
                    Rule.DEPTH,
                    "%s needs %s in of clear depth, with play %s in; the case has %s in."
                            .formatted(
                                    deepest.piece().name(),
                                    need.text(),
                                    need.plus(PLAY).text(),
                                    wish.depth().text()),
                    row.provenance().grade(),
                    deepest.piece().id());
        }
    }

    private DisplayRule rule(String id) {
        return tables.displayRule(id);
    }
}
