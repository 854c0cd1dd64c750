package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.AWARD;
import static org.honorsdue.reading.token.SenseKind.CAMPAIGN;
import static org.honorsdue.reading.token.SenseKind.DEVICE;
import static org.honorsdue.reading.token.SenseKind.LEVEL;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.NOTHING;
import static org.honorsdue.reading.token.SenseKind.ORDER;
import static org.honorsdue.reading.token.SenseKind.TERM;
import static org.honorsdue.reading.token.SenseKind.THEATER;
import static org.honorsdue.reading.token.SenseKind.WEAPON;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.token.Sense;
import org.honorsdue.reading.token.SenseKind;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Place;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.OrderCited;
import org.jspecify.annotations.Nullable;

/**
 * A list of awards, badges, campaigns, qualifications and remarks, in whatever order and box the clerk typed them. What
 * an item means is settled by its neighbours; where they leave two readings, both become facts, marked as doubtful.
 */
final class Items {
    private final EntryText entry;
    private final List<Piece> pieces;
    private final RemarkTerms terms;
    private final Qualifications qualifications;
    private final List<Claim> claims = new ArrayList<>();
    private final List<PendingDevice> pendingDevices = new ArrayList<>();
    private final List<Piece> pendingOrders = new ArrayList<>();
    private final List<Piece> campaigns = new ArrayList<>();

    private @Nullable Claim current;
    private boolean with;
    private @Nullable Piece count;
    private int at;

    private record PendingDevice(Device device, int number, Piece piece) {}

    Items(EntryText entry) {
        this.entry = entry;
        pieces = entry.pieces();
        terms = new RemarkTerms(entry);
        qualifications = new Qualifications(entry);
    }

    void read() {
        if (entry.saysNothing()) {
            return;
        }
        for (at = 0; at < pieces.size(); at++) {
            Piece piece = pieces.get(at);
            if (piece.isTaken()) {
                continue;
            }
            settle(piece);
            endRowUnlessPartOf(piece);
            switch (piece.type()) {
                case PHRASE -> phrase(piece);
                case NUMBER -> number(piece);
                case DATE -> date(piece);
                case ORDER -> order(piece);
                case UNREAD -> letter(piece);
            }
        }
        qualifications.finish();
        dropPending();
        settleCampaigns();
        claims.forEach(claim -> entry.add(claim.fact(entry)));
    }

    private @Nullable Piece next(int ahead) {
        return at + ahead < pieces.size() ? pieces.get(at + ahead) : null;
    }

    private @Nullable Piece before(int back) {
        return at - back >= 0 ? pieces.get(at - back) : null;
    }

    // ---- settling by the neighbours

    /** {@code SS} beside a weapon is a class; beside an order it is the Silver Star. */
    private void settle(Piece piece) {
        if (!piece.isPhrase() || !piece.may(LEVEL) || !piece.may(AWARD)) {
            settleBar(piece);
            return;
        }
        Piece after = next(1);
        Piece prior = before(1);
        boolean weaponNear = after != null && after.may(WEAPON) && !after.isSetOff()
                || prior != null && prior.may(WEAPON) && !piece.isSetOff()
                || after != null && after.isDate() && next(2) != null && qualifications.hasLevel();
        boolean orderNear = after != null && (after.isOrder() || after.may(DEVICE, "bronze-oak-leaf-cluster"))
                || after != null && after.is(LINK, "with");
        if (weaponNear && !orderNear) {
            piece.settle(LEVEL);
            piece.makeSure("settled by the weapon beside it");
        } else if (orderNear && !weaponNear) {
            piece.settle(AWARD);
            piece.makeSure("settled by what follows it");
        }
    }

    /** {@code BAR} is a weapon beside a class, else a bar. */
    private void settleBar(Piece piece) {
        if (piece.isPhrase() && piece.may(LEVEL) && !piece.is(LEVEL)) {
            Piece after = next(1);
            if (after != null && after.may(WEAPON) || !qualifications.isEmpty()) {
                piece.settle(LEVEL);
            }
        }
    }

    private void endRowUnlessPartOf(Piece piece) {
        if (qualifications.isEmpty()) {
            return;
        }
        boolean part = piece.is(LEVEL)
                || piece.is(WEAPON)
                || piece.isDate()
                || piece.isNumber()
                || piece.is(LINK)
                || piece.is(TERM, "qualified")
                || piece.may(WEAPON);
        if (!part) {
            qualifications.finish();
        }
    }

    // ---- phrases

    private void phrase(Piece piece) {
        Sense sense = piece.sense();
        switch (sense.kind()) {
            case AWARD -> awardOrStar(piece);
            case DEVICE -> device(piece);
            case CAMPAIGN -> campaign(piece);
            case LEVEL -> {
                qualifications.add(piece.take());
                current = null;
                clearCount();
            }
            case WEAPON -> weapon(piece);
            case TERM -> term(piece);
            case LINK -> link(piece);
            case THEATER -> theater(piece);
            case NOTHING -> piece.take();
            default -> {
                occupied(piece);
                piece.take();
                clearCount();
            }
        }
    }

    /** {@code Bronze Star} is a name of the medal, and what stands on a ribbon is called the same. */
    private void awardOrStar(Piece piece) {
        if (piece.may(TERM, "bronze-star")) {
            bronzeStar(piece);
        } else if (piece.may(TERM, "silver-star")) {
            silverStar(piece);
        } else {
            award(piece);
        }
    }

    private void award(Piece piece) {
        Piece number = count;
        clearCount();
        Claim claim = open(piece.sense().id(), piece);
        if (number != null) {
            claim.number(number.number());
            claim.extend(number.take(number.number() + ""));
        }
        otherReadings(piece, claim);
        attachPending(claim);
        with = false;
    }

    private Claim open(String award, Piece piece) {
        var claim = new Claim(award, piece.take());
        claims.add(claim);
        current = claim;
        return claim;
    }

    /** Where the words leave two awards possible, the second is claimed too, both in doubt. */
    private void otherReadings(Piece piece, Claim claim) {
        if (piece.certainty() != org.honorsdue.service.fact.Basis.Certainty.DOUBTFUL) {
            return;
        }
        for (Sense other : piece.senses()) {
            if (other.kind() == AWARD && !other.id().equals(claim.award)) {
                var second = new Claim(other.id(), piece);
                second.doubt();
                claims.add(claims.size() - 1, second);
            } else if (other.kind() == LEVEL) {
                entry.add(new org.honorsdue.service.fact.Qualification(
                        org.honorsdue.service.fact.Qualification.Level.valueOf(other.id()),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        entry.basis(piece)));
            }
        }
    }

    private void attachPending(Claim claim) {
        pendingDevices.forEach(pending -> claim.add(pending.device(), pending.number(), pending.piece()));
        pendingDevices.clear();
        pendingOrders.forEach(claim::cite);
        pendingOrders.clear();
    }

    private void dropPending() {
        pendingOrders.forEach(this::withoutAward);
        pendingOrders.clear();
        pendingDevices.clear();
    }

    private void theater(Piece piece) {
        Piece after = next(1);
        Piece second = next(2);
        boolean ribbonMeant = after != null
                && (after.is(LINK, "with")
                        || isStarOrArrowhead(after)
                        || after.isNumber() && second != null && isStarOrArrowhead(second));
        var medal = ribbonMeant ? medalOf(piece.sense().id()) : "";
        if (medal.isEmpty()) {
            piece.take();
            clearCount();
            return;
        }
        piece.correct("the theater is named for its ribbon");
        Claim claim = open(medal, piece);
        clearCount();
        attachPending(claim);
    }

    private String medalOf(String place) {
        Set<Theater> theaters =
                entry.reference().place(place).map(Place::theaters).orElse(Set.of());
        if (theaters.size() != 1) {
            return "";
        }
        return switch (theaters.iterator().next()) {
            case EAME -> "eame-campaign-medal";
            case ASIATIC_PACIFIC -> "asiatic-pacific-campaign-medal";
            case AMERICAN -> "american-campaign-medal";
            case CONTINENTAL_US -> "";
        };
    }

    private static boolean isStarOrArrowhead(Piece piece) {
        return piece.may(DEVICE, "star")
                || piece.may(DEVICE, "bronze-service-star")
                || piece.may(DEVICE, "silver-service-star")
                || piece.may(DEVICE, "arrowhead")
                || piece.may(TERM, "bronze-star");
    }

    private void link(Piece piece) {
        piece.take();
        switch (piece.sense().id()) {
            case "with" -> {
                with = true;
                count = null;
            }
            case "and", "number" -> {}
            default -> count = null;
        }
    }

    private void weapon(Piece piece) {
        boolean badgeBar = piece.may(WEAPON, "Auto Rifle") && piece.text().equalsIgnoreCase("bar");
        if (badgeBar && !qualifications.hasLevel() && !levelFollows()) {
            return;
        }
        qualifications.add(piece.take());
        current = null;
        clearCount();
    }

    private boolean levelFollows() {
        Piece after = next(1);
        return after != null && after.may(LEVEL);
    }

    private void campaign(Piece piece) {
        piece.take();
        clearCount();
        campaigns.add(piece);
    }

    // ---- devices

    private void device(Piece piece) {
        Sense sense = piece.sense();
        int number = numberFor(piece);
        Device device = sense.id().equals("star")
                ? Device.STAR_UNSPECIFIED
                : Device.ofId(sense.id()).orElse(Device.STAR_UNSPECIFIED);
        attach(piece.take(), device, number);
    }

    /** The number typed before the device, or in figures right after it. */
    private int numberFor(Piece piece) {
        Piece before = count;
        clearCountKeepingWith();
        if (before != null) {
            before.take(before.isOrdinal() ? "number " + before.number() : before.number() + "");
            return before.number();
        }
        Piece after = next(1);
        if (after != null && after.isNumber() && after.number() >= 1 && after.number() <= 20) {
            Piece second = next(2);
            boolean countsNext = second != null
                    && !after.afterBracket()
                    && !second.isSetOff()
                    && (second.may(DEVICE) || second.may(AWARD) || second.may(TERM, "bronze-star"));
            if (after.afterBracket() || !countsNext && after.afterHyphen()) {
                after.take(after.number() + "");
                return after.number();
            }
        }
        return 1;
    }

    private void attach(Piece piece, Device device, int number) {
        boolean star = device == Device.STAR_UNSPECIFIED
                || device == Device.BRONZE_SERVICE_STAR
                || device == Device.SILVER_SERVICE_STAR
                || device == Device.ARROWHEAD;
        if (isForwardLinked()) {
            pendingDevices.add(new PendingDevice(star ? bronzeIfPlain(device) : device, number, piece));
            return;
        }
        Claim bearer = bearer(device, star);
        if (bearer == null) {
            pendingDevices.add(new PendingDevice(star ? bronzeIfPlain(device) : device, number, piece));
            return;
        }
        Device meant = device == Device.STAR_UNSPECIFIED && bearer.bearsStars() ? Device.BRONZE_SERVICE_STAR : device;
        bearer.add(meant, number, piece);
    }

    private static Device bronzeIfPlain(Device device) {
        return device == Device.STAR_UNSPECIFIED ? Device.BRONZE_SERVICE_STAR : device;
    }

    /** {@code 1st OLC to Air Medal}, {@code 3 bronze stars for EAME}: the award follows. */
    private boolean isForwardLinked() {
        Piece link = next(1);
        Piece target = next(2);
        boolean toward = link != null && (link.is(LINK, "for") || link.is(LINK, "to") || link.is(LINK, "of"));
        return toward && target != null && (target.is(AWARD) || target.may(AWARD));
    }

    /** The award a device belongs to: the one just named, unless it cannot be and an earlier or later one can. */
    private @Nullable Claim bearer(Device device, boolean star) {
        Claim last = current;
        boolean cluster = device == Device.BRONZE_OAK_LEAF_CLUSTER || device == Device.SILVER_OAK_LEAF_CLUSTER;
        if (last != null
                && (with || star && last.bearsStars() || cluster && last.bearsClusters() || !star && !cluster)) {
            return last;
        }
        for (int i = claims.size() - 1; i >= 0; i--) {
            Claim claim = claims.get(i);
            if (star && claim.bearsStars() && last != null || cluster && claim.bearsClusters()) {
                return claim;
            }
        }
        return last != null && !nextAwardFollows() ? last : null;
    }

    private boolean nextAwardFollows() {
        Piece after = next(1);
        return after != null && after.is(AWARD);
    }

    /** {@code Bronze Star}: the medal, or service stars. The number, a "with", and what stands around it decide. */
    private void bronzeStar(Piece piece) {
        Piece number = count;
        boolean plural = piece.text().toUpperCase(Locale.ROOT).endsWith("S")
                && !piece.text().equalsIgnoreCase("BS");
        Claim last = current;
        boolean afterRibbon = last != null && last.bearsStars();
        Piece after = next(1);
        boolean medalMarked = after != null
                && (after.may(DEVICE, "letter-v")
                        || after.may(DEVICE, "bronze-oak-leaf-cluster")
                        || after.isOrder()
                        || after.is(LINK, "with"));
        boolean toRibbon = isForwardLinked();
        boolean many = number != null && number.number() >= 2;
        if (with && last != null || toRibbon && !medalMarked) {
            device(piece, Device.BRONZE_SERVICE_STAR, "service star");
        } else if (afterRibbon && (number != null || plural || piece.afterBracket())) {
            device(piece, Device.BRONZE_SERVICE_STAR, "service star");
        } else if (plural || many) {
            starsWithoutRibbon(piece, number);
        } else if (last != null && afterRibbon && !piece.isSetOff() && !medalMarked && !andBefore()) {
            bothWays(piece, last);
        } else {
            medal(piece, number, "bronze-star-medal", "Bronze Star Medal");
        }
    }

    private boolean andBefore() {
        Piece prior = before(1);
        return prior != null && prior.is(LINK, "and");
    }

    /** Stars named before any ribbon: they go to the next one that bears stars, or to an earlier one. */
    private void starsWithoutRibbon(Piece piece, @Nullable Piece number) {
        for (int i = claims.size() - 1; i >= 0; i--) {
            if (claims.get(i).bearsStars()) {
                Claim ribbon = claims.get(i);
                int stars = number == null ? 1 : number.number();
                take(number);
                piece.take("bronze service star");
                clearCount();
                ribbon.add(Device.BRONZE_SERVICE_STAR, stars, piece);
                return;
            }
        }
        device(piece, Device.BRONZE_SERVICE_STAR, "service star");
    }

    private static void take(@Nullable Piece number) {
        if (number != null) {
            number.take(number.number() + "");
        }
    }

    private void device(Piece piece, Device device, String meaning) {
        int number = numberFor(piece);
        attach(piece.take((device == Device.SILVER_SERVICE_STAR ? "silver " : "bronze ") + meaning), device, number);
    }

    private void medal(Piece piece, @Nullable Piece number, String award, String meaning) {
        clearCount();
        piece.take(meaning);
        Claim claim = open(award, piece);
        if (number != null) {
            claim.number(number.number());
            take(number);
        }
        attachPending(claim);
    }

    /** Both readings are kept: a star on the ribbon before it, or the medal. */
    private void bothWays(Piece piece, Claim ribbon) {
        clearCount();
        piece.take("Bronze Star Medal");
        piece.doubt("the medal, or a star on the ribbon before it", List.of("bronze service star"));
        var starred = new Claim(ribbon.award, piece);
        starred.add(Device.BRONZE_SERVICE_STAR, 1, piece);
        starred.doubt();
        claims.add(starred);
        open("bronze-star-medal", piece);
    }

    private void silverStar(Piece piece) {
        Claim last = current;
        boolean afterRibbon = last != null && last.bearsStars();
        boolean plural = piece.text().toUpperCase(Locale.ROOT).endsWith("S");
        if (afterRibbon && (with || count != null || plural || piece.afterBracket()) || isForwardLinked()) {
            device(piece, Device.SILVER_SERVICE_STAR, "service star");
        } else {
            medal(piece, count, "silver-star", "Silver Star");
        }
    }

    // ---- terms

    private void term(Piece piece) {
        switch (piece.sense().id()) {
            case "bronze-star" -> bronzeStar(piece);
            case "silver-star" -> silverStar(piece);
            case "bsv" -> {
                medal(piece, count, "bronze-star-medal", "Bronze Star Medal with letter V");
                if (current != null) {
                    current.add(Device.LETTER_V, 1, piece);
                }
            }
            case "clasp" -> clasp(piece);
            case "award-word" -> awardWord(piece);
            default -> {
                at = terms.read(at);
                clearCount();
            }
        }
        if (!piece.isTaken()) {
            piece.take();
        }
    }

    private void clasp(Piece piece) {
        Claim last = current;
        piece.take();
        if (last == null) {
            return;
        }
        switch (last.award) {
            case "american-defense-service-medal" -> last.add(Device.FOREIGN_SERVICE_CLASP, 1, piece);
            case "army-good-conduct-medal" -> last.add(Device.GOOD_CONDUCT_CLASP, Math.max(1, numberFor(piece)), piece);
            default -> {}
        }
        clearCount();
    }

    /** {@code (2d award)}: the number of awards so far. */
    private void awardWord(Piece piece) {
        Claim last = current;
        if (last == null) {
            return;
        }
        String text = piece.text().toUpperCase(Locale.ROOT);
        int number = text.startsWith("2") || text.startsWith("SEC")
                ? 2
                : text.startsWith("3") || text.startsWith("TH") ? 3 : count == null ? 1 : count.number();
        take(count);
        last.number(number);
        last.extend(piece);
        clearCount();
    }

    /** Germany or Japan after the occupation medal names its clasp; a lone letter in brackets does the same. */
    private void occupied(Piece piece) {
        Claim last = current;
        if (last == null || !last.award.equals("army-of-occupation-medal")) {
            return;
        }
        String text = piece.text().toUpperCase(Locale.ROOT);
        if (text.startsWith("GER") || text.equals("G")) {
            last.add(Device.GERMANY_CLASP, 1, piece.take("Germany clasp"));
        } else if (text.startsWith("JAP") || text.equals("J")) {
            last.add(Device.JAPAN_CLASP, 1, piece.take("Japan clasp"));
        }
    }

    private void letter(Piece piece) {
        if (piece.text().length() == 1) {
            occupied(piece);
        }
        with = false;
        count = null;
    }

    // ---- numbers, dates, orders

    private void number(Piece piece) {
        Piece after = next(1);
        if (after == null) {
            return;
        }
        if (!qualifications.isEmpty() && piece.number() >= 100) {
            piece.take("score " + piece.number());
            return;
        }
        boolean counts = after.may(DEVICE)
                || after.may(AWARD)
                || after.may(TERM, "bronze-star")
                || after.may(TERM, "silver-star")
                || after.may(TERM, "award-word")
                || after.may(TERM, "days")
                || after.may(TERM, "lost")
                || after.may(TERM, "asr");
        if (counts && piece.number() >= 0 && piece.number() <= 400) {
            count = piece;
        }
    }

    private void date(Piece piece) {
        if (!qualifications.isEmpty()) {
            qualifications.add(piece.take());
            return;
        }
        Claim last = current;
        piece.take();
        clearCount();
        if (last != null && !last.isDated()) {
            last.date(piece);
        } else if (next(1) != null && next(1).is(LEVEL)) {
            qualifications.add(piece);
        }
    }

    private void order(Piece piece) {
        piece.take();
        clearCount();
        entry.addOrders(piece.orders());
        Claim last = current;
        if (last != null && !piece.beginsAnew()) {
            last.cite(piece);
        } else if (last == null) {
            pendingOrders.add(piece);
        } else {
            withoutAward(piece);
        }
    }

    /** An order that belongs to no award named: the one behind the campaigns. */
    private void withoutAward(Piece piece) {
        for (var order : piece.orders()) {
            entry.add(new OrderCited(entry.paper(), entry.entry(), order, entry.basis(piece)));
        }
    }

    private void clearCount() {
        count = null;
        with = false;
    }

    private void clearCountKeepingWith() {
        count = null;
    }

    // ---- campaigns

    /** A credit for a whole theatre, or a place, is settled by the other campaigns on the line where they agree. */
    private void settleCampaigns() {
        var theaters = new HashSet<Theater>();
        for (Piece piece : campaigns) {
            if (count(piece, CAMPAIGN) == 1) {
                entry.reference().campaign(piece.sense().id()).ifPresent(campaign -> theaters.add(campaign.theater()));
            }
        }
        for (Claim claim : claims) {
            switch (claim.award) {
                case "eame-campaign-medal" -> theaters.add(Theater.EAME);
                case "asiatic-pacific-campaign-medal" -> theaters.add(Theater.ASIATIC_PACIFIC);
                default -> {}
            }
        }
        campaigns.forEach(piece -> campaign(piece, theaters));
    }

    private static long count(Piece piece, SenseKind kind) {
        return piece.senses().stream().filter(sense -> sense.kind() == kind).count();
    }

    private void campaign(Piece piece, Set<Theater> theaters) {
        List<Sense> possible = piece.senses().stream()
                .filter(sense -> sense.kind() == CAMPAIGN)
                .filter(sense -> sense.standing() == piece.sense().standing())
                .toList();
        if (possible.size() > 1 && theaters.size() == 1) {
            var inTheater = possible.stream()
                    .filter(sense -> entry.reference()
                            .campaign(sense.id())
                            .map(campaign -> theaters.contains(campaign.theater()))
                            .orElse(false))
                    .toList();
            possible = inTheater.isEmpty() ? possible : inTheater;
        }
        if (possible.size() == 1 && piece.settle(CAMPAIGN, possible.get(0).id())) {
            boolean blanket = entry.reference()
                    .campaign(possible.get(0).id())
                    .map(org.honorsdue.reference.history.Campaign::blanket)
                    .orElse(false);
            if (blanket) {
                piece.correct("settled by the other campaigns of the entry");
            }
        }
        for (Sense sense : possible) {
            entry.add(new CampaignClaim(sense.id(), piece.text(), entry.basis(piece)));
        }
    }
}
