package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.AWARD;
import static org.honorsdue.reading.token.SenseKind.CAMPAIGN;
import static org.honorsdue.reading.token.SenseKind.DEVICE;
import static org.honorsdue.reading.token.SenseKind.LEVEL;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.NOTHING;
import static org.honorsdue.reading.token.SenseKind.ORDER;
import static org.honorsdue.reading.token.SenseKind.PLACE;
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
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.OrderCited;
import org.honorsdue.service.paper.Entry;
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
    /** Something unread stands since the last award: what follows may belong to it. */
    private boolean orphan;

    private @Nullable Piece count;
    private int at;
    private int deviceAt = -2;
    private boolean numberSetOff;

    private final List<Metal> metals = new ArrayList<>();

    private record Metal(boolean silver, Piece number, Piece piece) {}

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
            if (piece.isTaken()) {
                clearCount();
                continue;
            }
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
        int wanted = at + ahead;
        return wanted >= 0 && wanted < pieces.size() ? pieces.get(wanted) : null;
    }

    private @Nullable Piece before(int back) {
        return at - back >= 0 ? pieces.get(at - back) : null;
    }

    // ---- settling by the neighbours

    /** {@code SS} beside a weapon is a class; beside an order it is the Silver Star. */
    private void settle(Piece piece) {
        if (piece.may(AWARD, "army-good-conduct-medal") && isTried()) {
            piece.take("general court-martial");
            return;
        }
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

    /** {@code Tried by GCM}: the court, not the medal. */
    private boolean isTried() {
        Piece prior = before(1);
        if (prior != null && prior.is(LINK)) {
            prior = before(2);
        }
        return prior != null && prior.is(TERM, "tried");
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
            case PLACE -> {
                occupied(piece);
                piece.take();
                clearCount();
                if (entry.entry() == Entry.BATTLES_AND_CAMPAIGNS) {
                    piece.doubt("a place, not the name of a campaign", List.of());
                }
            }
            default -> {
                occupied(piece);
                piece.take();
                clearCount();
                if (entry.entry() != Entry.REMARKS && sense.kind() != ORDER && sense.kind() != SenseKind.MONTH) {
                    piece.doubt("not what this entry is for", List.of());
                }
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
        if (isDenied(piece)) {
            piece.take();
            piece.doubt("the words beside it say that it is not so", List.of());
            current = null;
            orphan = true;
            return;
        }
        doubtLoneLetters(piece);
        Claim claim = open(piece.sense().id(), piece);
        if (number != null && claim.mayBeNumbered() && number.number() <= 30) {
            claim.number(number.number());
            claim.extend(number.take(number.number() + ""));
        }
        otherReadings(piece, claim);
        attachPending(claim);
        occupiedBefore(claim, piece);
        with = false;
    }

    /** {@code German occupation medal}. */
    private void occupiedBefore(Claim claim, Piece piece) {
        Piece prior = before(1);
        if (prior != null && prior.is(PLACE) && !piece.isSetOff()) {
            current = claim;
            occupied(prior);
        }
    }

    /** {@code not eligible for Good Conduct Medal}, {@code Good Conduct Medal not authorized}. */
    private boolean isDenied(Piece piece) {
        Piece after = next(1);
        if (after != null && after.is(TERM, "not") && !after.isSetOff()) {
            return true;
        }
        boolean setOff = piece.isSetOff();
        for (int back = 1; back <= 3 && !setOff; back++) {
            Piece prior = before(back);
            if (prior == null) {
                return false;
            }
            if (prior.is(TERM, "not")) {
                return true;
            }
            if (!prior.is(LINK) && !prior.is(TERM, "authorized")) {
                return false;
            }
            setOff = prior.isSetOff();
        }
        return false;
    }

    /** Two or three letters alone in the remarks, {@code GCM} or {@code AM}, may be something else than an award. */
    private void doubtLoneLetters(Piece piece) {
        if (entry.entry() != Entry.REMARKS
                || piece.text().length() > 3
                || piece.senses().size() < 2
                || piece.certainty() == Certainty.DOUBTFUL) {
            return;
        }
        Piece prior = before(1);
        Piece after = next(1);
        if (isAboutAwards(prior) || isAboutAwards(after)) {
            return;
        }
        piece.doubt(
                "nothing beside it says which",
                piece.senses().stream()
                        .filter(sense -> sense.kind() != AWARD)
                        .map(Sense::words)
                        .toList());
    }

    private static boolean isAboutAwards(@Nullable Piece piece) {
        return piece != null
                && (piece.isOrder()
                        || piece.is(AWARD)
                        || piece.is(DEVICE)
                        || piece.is(LINK, "with")
                        || piece.is(TERM, "bronze-star")
                        || piece.is(TERM, "authorized"));
    }

    private Claim open(String award, Piece piece) {
        var claim = new Claim(award, piece.take());
        claims.add(claim);
        current = claim;
        orphan = false;
        return claim;
    }

    /** Where the words leave two awards possible, the second is claimed too, both in doubt. */
    private void otherReadings(Piece piece, Claim claim) {
        if (piece.certainty() != Certainty.DOUBTFUL) {
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
        for (PendingDevice pending : pendingDevices) {
            if (pending.device() == Device.GOOD_CONDUCT_CLASP) {
                open("army-good-conduct-medal", pending.piece())
                        .add(pending.device(), pending.number(), pending.piece());
            }
        }
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
            case "and" -> with |= deviceAt == at - 1;
            case "number" -> {}
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
        if (entry.entry() == Entry.REMARKS && piece.may(PLACE) && !besideCampaign()) {
            piece.doubt("the campaign, or only the place", List.of("the place"));
        }
    }

    private boolean besideCampaign() {
        for (int step : new int[] {-2, -1, 1, 2}) {
            Piece near = next(step);
            if (near != null && (near.is(CAMPAIGN) || near.is(TERM, "item") || near.isOrder())) {
                return true;
            }
        }
        return false;
    }

    // ---- devices

    private void device(Piece piece) {
        Sense sense = piece.sense();
        int number = numberFor(piece);
        if (sense.id().equals("letter-v") && number > 1) {
            piece.doubt("nobody has more than one letter V on an award", List.of());
        }
        Device device = sense.id().equals("star")
                ? Device.STAR_UNSPECIFIED
                : Device.ofId(sense.id()).orElse(Device.STAR_UNSPECIFIED);
        attach(piece.take(), device, number);
    }

    /** The number typed before the device, or in figures right after it. */
    private int numberFor(Piece piece) {
        Piece before = count;
        numberSetOff = before == null ? piece.isSetOff() : before.isSetOff();
        clearCountKeepingWith();
        if (before != null) {
            before.take(before.isOrdinal() ? "number " + before.number() : before.number() + "");
            return before.number();
        }
        Piece after = next(1);
        boolean number = after != null && after.isNumber() && after.number() >= 1 && after.number() <= 20;
        if (!number && isPlural(piece)) {
            piece.doubt("how many is not typed", List.of());
        }
        if (after != null && number) {
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

    private static boolean isPlural(Piece piece) {
        String text = piece.text().toUpperCase(Locale.ROOT);
        return text.endsWith("STARS") || text.endsWith("STRS") || text.endsWith("CLUSTERS") || text.endsWith("OLCS");
    }

    private void attach(Piece piece, Device device, int number) {
        boolean star = device == Device.STAR_UNSPECIFIED
                || device == Device.BRONZE_SERVICE_STAR
                || device == Device.SILVER_SERVICE_STAR
                || device == Device.ARROWHEAD;
        boolean cluster = device == Device.BRONZE_OAK_LEAF_CLUSTER || device == Device.SILVER_OAK_LEAF_CLUSTER;
        if (!metals.isEmpty() && (star && device != Device.ARROWHEAD || cluster)) {
            boolean was = with;
            var waiting = List.copyOf(metals);
            metals.clear();
            for (Metal metal : waiting) {
                take(metal.number());
                with = was;
                attach(
                        metal.piece(),
                        ofMetal(metal.silver(), cluster),
                        metal.number().number());
            }
            with = was;
        }
        if (orphan && current == null) {
            piece.doubt("it belongs to something that was not read", List.of());
            return;
        }
        if (isForwardLinked() || star && standsBeforeItsRibbon(number, piece)) {
            pendingDevices.add(new PendingDevice(star ? bronzeIfPlain(device) : device, number, piece));
            return;
        }
        Claim bearer = bearer(device, star);
        if (bearer == null) {
            pendingDevices.add(new PendingDevice(star ? bronzeIfPlain(device) : device, number, piece));
            return;
        }
        deviceAt = at;
        with = false;
        Device meant = device == Device.STAR_UNSPECIFIED && bearer.bearsStars() ? Device.BRONZE_SERVICE_STAR : device;
        if (star && bearer.award.equals("parachutist-badge")) {
            meant = Device.BRONZE_STAR_ON_PARACHUTIST_BADGE;
        }
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

    /** {@code 3 bronze stars EAME ribbon}, where the award before has its stars or is set off from these. */
    private boolean standsBeforeItsRibbon(int number, Piece piece) {
        Piece after = next(1);
        boolean ribbonNext = !with
                && after != null
                && after.is(AWARD)
                && !after.isSetOff()
                && Claim.bearsStars(after.sense().id());
        if (!ribbonNext) {
            return false;
        }
        Claim last = current;
        if (last == null || last.hasStars() || !last.bearsStars()) {
            return true;
        }
        if (numberSetOff) {
            return true;
        }
        if (number > 1 && !last.mayHaveSeveralStars()) {
            piece.doubt("taken with the ribbon after it", List.of("with the ribbon before it"));
            return true;
        }
        return false;
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
        boolean starred = last != null && last.hasStars();
        Piece after = next(1);
        boolean medalMarked = after != null
                && (after.may(DEVICE, "letter-v")
                        || after.may(DEVICE, "bronze-oak-leaf-cluster")
                        || after.isOrder()
                        || after.is(LINK, "with"));
        boolean toRibbon = isForwardLinked();
        boolean many = number != null && number.number() >= 2;
        if (with && last != null && last.award.endsWith("croix-de-guerre")) {
            device(piece, Device.STAR_UNSPECIFIED, "star");
        } else if (with && last != null && (number != null || plural || !starred) || toRibbon && !medalMarked) {
            device(piece, Device.BRONZE_SERVICE_STAR, "service star");
        } else if (number != null && !with && forwardRibbon()) {
            device(piece, Device.BRONZE_SERVICE_STAR, "service star");
        } else if (afterRibbon && (number != null || plural || piece.afterBracket())) {
            device(piece, Device.BRONZE_SERVICE_STAR, "service star");
        } else if (plural || many) {
            starsWithoutRibbon(piece, number);
        } else if (last != null && afterRibbon && !starred && !piece.isSetOff() && !medalMarked && !andBefore()) {
            bothWays(piece, last);
        } else {
            medal(piece, number, "bronze-star-medal", "Bronze Star Medal");
        }
    }

    private boolean forwardRibbon() {
        Piece after = next(1);
        return after != null
                && after.is(AWARD)
                && !after.isSetOff()
                && Claim.bearsStars(after.sense().id());
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
        attach(piece.take(starWords(device, meaning)), device, number);
    }

    private static String starWords(Device device, String meaning) {
        return switch (device) {
            case SILVER_SERVICE_STAR -> "silver " + meaning;
            case BRONZE_SERVICE_STAR -> "bronze " + meaning;
            default -> meaning;
        };
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
        boolean cross = last != null && last.award.endsWith("croix-de-guerre");
        if (with && cross) {
            device(piece, Device.STAR_UNSPECIFIED, "star");
        } else if (with && last != null && !afterRibbon) {
            piece.doubt("a star on the award before it, or the Silver Star", List.of("silver star"));
            medal(piece, count, "silver-star", "Silver Star");
        } else if (afterRibbon && (with || count != null || plural || piece.afterBracket()) || isForwardLinked()) {
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
            case "silver", "bronze" -> metal(piece);
            case "loop" -> loops(piece);
            case "clasp" -> clasp(piece);
            case "item" -> item();
            case "regulation", "readjustment" -> regulation();
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

    /** {@code w/1 silver and 2 bronze stars}: the first metal waits for the word that both share. */
    private void metal(Piece piece) {
        Piece number = count;
        piece.take();
        if (number != null) {
            metals.add(new Metal(piece.sense().id().equals("silver"), number, piece));
        }
        count = null;
    }

    private static Device ofMetal(boolean silver, boolean cluster) {
        if (cluster) {
            return silver ? Device.SILVER_OAK_LEAF_CLUSTER : Device.BRONZE_OAK_LEAF_CLUSTER;
        }
        return silver ? Device.SILVER_SERVICE_STAR : Device.BRONZE_SERVICE_STAR;
    }

    /** Each loop of the Good Conduct clasp stands for an award. */
    private void loops(Piece piece) {
        Claim last = current;
        Piece number = count;
        piece.take();
        clearCount();
        if (last != null && last.award.equals("army-good-conduct-medal")) {
            int loops = number == null ? 1 : number.number();
            take(number);
            last.loops(loops, piece);
        }
    }

    /** {@code AR 600-68}: the figures belong to the regulation. */
    private void regulation() {
        for (int step = 1; step <= 2; step++) {
            Piece figures = next(step);
            if (figures == null || !figures.isNumber() || step == 2 && !figures.afterHyphen()) {
                break;
            }
            figures.take(figures.text());
        }
        clearCount();
    }

    /** {@code Item 33}: the number is that of an entry. */
    private void item() {
        Piece number = next(1);
        if (number != null && number.isNumber()) {
            number.take("entry " + number.number());
            at++;
        }
        clearCount();
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
        Piece after = next(1);
        boolean countsNext = after != null
                && (after.may(DEVICE) || after.may(TERM, "bronze-star") || after.may(TERM, "silver-star"));
        if (piece.text().length() == 1 && countsNext && piece.readAsFigure()) {
            number(piece);
            return;
        }
        if (piece.text().length() == 1) {
            occupied(piece);
        } else if (piece.text().length() > 2) {
            current = null;
            orphan = true;
        }
        with = false;
        count = null;
    }

    // ---- numbers, dates, orders

    private static boolean isYear(Piece piece) {
        return piece.figures() == 2 && piece.number() >= 40 && piece.number() <= 46 && !piece.isOrdinal();
    }

    private void number(Piece piece) {
        Piece after = next(1);
        if (qualifications.hasLevel() && isYear(piece) && (after == null || after.isSetOff() || after.may(LEVEL))) {
            piece.redate(org.honorsdue.service.fact.PartialDate.year(1900 + piece.number()));
            piece.correct("two figures read as a year");
            qualifications.add(piece.take());
            return;
        }
        if (!qualifications.isEmpty() && piece.number() >= 100) {
            piece.take("score " + piece.number());
            return;
        }
        if (after != null && after.isNumber() && after.number() == piece.number()) {
            piece.take(piece.number() + "");
            return;
        }
        Claim last = current;
        Piece prior = before(1);
        if (piece.afterBracket() && last != null && prior != null && prior.is(AWARD) && last.mayBeNumbered()) {
            last.number(piece.number());
            last.extend(piece.take(piece.number() + ""));
            return;
        }
        boolean counts = after != null
                && (after.may(DEVICE)
                        || after.may(AWARD)
                        || after.may(TERM, "bronze-star")
                        || after.may(TERM, "silver-star")
                        || after.may(TERM, "award-word")
                        || after.may(TERM, "days")
                        || after.may(TERM, "lost")
                        || after.may(TERM, "asr")
                        || after.is(TERM, "silver")
                        || after.is(TERM, "bronze")
                        || after.is(TERM, "loop"));
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
        Claim last = current != null || claims.isEmpty() ? current : claims.get(claims.size() - 1);
        if (last != null && orphan) {
            piece.correct("words before it were not read; taken with the award before them");
        }
        if (last != null) {
            last.cite(piece);
        } else {
            pendingOrders.add(piece);
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
                piece.settleDoubt("settled by the other campaigns of the entry");
            }
        }
        for (Sense sense : possible) {
            entry.add(new CampaignClaim(sense.id(), piece.text(), entry.basis(piece)));
        }
    }
}
