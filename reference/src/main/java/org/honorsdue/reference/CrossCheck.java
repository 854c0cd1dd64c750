package org.honorsdue.reference;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.AssaultTable;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.CampaignTable;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.OccupationTable;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.history.PlaceTable;
import org.honorsdue.reference.history.TheaterTable;
import org.honorsdue.reference.history.TheaterWindow;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.AwardTable;
import org.honorsdue.reference.law.ClauseTable;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.paper.AbbreviationTable;
import org.honorsdue.reference.paper.DocumentTable;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.reference.paper.PayMark;
import org.honorsdue.reference.paper.PayMarkTable;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.reference.paper.SeparationCode;
import org.honorsdue.reference.paper.SeparationCodeTable;
import org.honorsdue.reference.paper.SpecialtyTable;
import org.honorsdue.reference.score.RatingDay;
import org.honorsdue.reference.score.ScoreFactor;
import org.honorsdue.reference.score.ScoreItem;
import org.honorsdue.reference.score.ScoreTables;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;

/** Holds the tables against each other: what one names, another must have, and nothing stands twice. */
final class CrossCheck {
    private static final Set<String> DEVICES_THAT_SCORE = Set.of("campaign-star", "arrowhead");

    private final FaultList faults;
    private final List<Located<Award>> awards;
    private final Map<String, Award> awardById = new HashMap<>();
    private final boolean allAwardsKnown;

    CrossCheck(FaultList faults, List<Located<Award>> awards) {
        this.faults = faults;
        this.awards = awards;
        unique(AwardTable.NAME, "id", awards, Award::id);
        awards.forEach(award -> awardById.put(award.value().id(), award.value()));
        allAwardsKnown = faults.isSound(AwardTable.NAME);
    }

    /** Every clause has its award, every award a clause, and no clause ended before its award began. */
    void laws(List<Located<LawClause>> clauses) {
        unique(ClauseTable.NAME, "id", clauses, LawClause::id);
        Set<String> ruled = new HashSet<>();
        for (var located : clauses) {
            LawClause clause = located.value();
            ruled.add(clause.award());
            Award award = awardById.get(clause.award());
            if (award == null) {
                unknownAward(ClauseTable.NAME, located.line(), "id", clause.award());
            } else if (allAwardsKnown
                    && clause.inForceUntil().isPresent()
                    && award.established().isPresent()
                    && clause.inForceUntil().get().isBefore(award.established().get())) {
                faults.add(
                        ClauseTable.NAME,
                        located.line(),
                        "in_force_until",
                        "The clause ended on %s, before the award was established on %s."
                                .formatted(
                                        clause.inForceUntil().get(),
                                        award.established().get()),
                        "Correct one of the two dates.");
            }
        }
        boolean allClausesKnown = faults.isSound(ClauseTable.NAME);
        for (var located : awards) {
            String id = located.value().id();
            if (allClausesKnown && !ruled.contains(id)) {
                faults.add(
                        AwardTable.NAME,
                        located.line(),
                        "id",
                        "\"%s\" has no clause.".formatted(id),
                        "Add at least one row for it to %s.".formatted(ClauseTable.NAME));
            }
        }
    }

    /** Every campaign lies inside its theatre and has the medal of its theatre; every theatre is there. */
    void campaigns(List<Located<Campaign>> campaigns, List<Located<TheaterWindow>> theaters) {
        unique(CampaignTable.NAME, "id", campaigns, Campaign::id);
        unique(
                TheaterTable.NAME,
                "theater",
                theaters,
                window -> window.theater().name());
        Map<Theater, TheaterWindow> windows = new HashMap<>();
        for (var located : theaters) {
            windows.put(located.value().theater(), located.value());
            knownAward(
                    TheaterTable.NAME, located.line(), "medal", located.value().medal());
        }
        boolean allTheatersKnown = faults.isSound(TheaterTable.NAME);
        for (var located : campaigns) {
            Campaign campaign = located.value();
            TheaterWindow window = windows.get(campaign.theater());
            if (!allTheatersKnown) {
                continue;
            }
            if (window == null) {
                faults.add(
                        CampaignTable.NAME,
                        located.line(),
                        "theater",
                        "The theatre has no dates.",
                        "Add a row for it to %s.".formatted(TheaterTable.NAME));
                continue;
            }
            inTheater(located.line(), "ground", campaign.ground(), window);
            inTheater(located.line(), "air", campaign.air(), window);
            if (!window.medal().equals(campaign.medal())) {
                faults.add(
                        CampaignTable.NAME,
                        located.line(),
                        "medal",
                        "\"%s\" is not the medal of this theatre.".formatted(campaign.medal()),
                        "Write %s, or correct the theatre.".formatted(window.medal()));
            }
        }
    }

    private void inTheater(long line, String arm, DateSpan dates, TheaterWindow window) {
        boolean early = dates.first().isBefore(window.dates().first());
        boolean late = dates.last().isAfter(window.dates().last());
        if (early || late) {
            faults.add(
                    CampaignTable.NAME,
                    line,
                    arm + (early ? "_first" : "_last"),
                    "The campaign, %s to %s, runs outside the dates of its theatre, %s to %s."
                            .formatted(
                                    dates.first(),
                                    dates.last(),
                                    window.dates().first(),
                                    window.dates().last()),
                    "Correct the campaign or the theatre.");
        }
    }

    /** Every landing has its campaign; a credited one lies inside it. */
    void assaults(List<Located<AssaultLanding>> assaults, List<Located<Campaign>> campaigns) {
        Map<String, Campaign> known = new HashMap<>();
        campaigns.forEach(campaign -> known.put(campaign.value().id(), campaign.value()));
        boolean allCampaignsKnown = faults.isSound(CampaignTable.NAME);
        for (var located : assaults) {
            AssaultLanding landing = located.value();
            Campaign campaign = known.get(landing.campaign());
            if (campaign == null && allCampaignsKnown) {
                faults.add(
                        AssaultTable.NAME,
                        located.line(),
                        "campaign",
                        "\"%s\" is not a campaign.".formatted(landing.campaign()),
                        "Write an id that stands in %s.".formatted(CampaignTable.NAME));
            } else if (campaign != null
                    && landing.credited()
                    && !landing.dates().overlaps(campaign.ground())
                    && !landing.dates().overlaps(campaign.air())) {
                faults.add(
                        AssaultTable.NAME,
                        located.line(),
                        "first",
                        "The landing of %s lies outside its campaign, %s to %s."
                                .formatted(
                                        landing.dates().first(),
                                        campaign.ground().first(),
                                        campaign.ground().last()),
                        "Correct the date or the campaign.");
            }
        }
    }

    /** Every occupied area is gated by a medal that exists, and its gated days lie inside it. */
    void occupation(List<Located<OccupationArea>> areas) {
        unique(OccupationTable.NAME, "id", areas, OccupationArea::id);
        for (var located : areas) {
            OccupationArea area = located.value();
            knownAward(OccupationTable.NAME, located.line(), "gate_medal", area.gateMedal());
            if (area.gated().first().isBefore(area.dates().first())
                    || area.gated().last().isAfter(area.dates().last())) {
                faults.add(
                        OccupationTable.NAME,
                        located.line(),
                        "gated_first",
                        "The gated days, %s to %s, run outside the occupation, %s to %s."
                                .formatted(
                                        area.gated().first(),
                                        area.gated().last(),
                                        area.dates().first(),
                                        area.dates().last()),
                        "Correct one of the two spans.");
            }
        }
    }

    /** A name leads to one place, however it is typed. */
    void places(List<Located<Place>> places) {
        Map<String, String> owner = new HashMap<>();
        for (var located : places) {
            Place place = located.value();
            claim(owner, located.line(), "name", place.name(), place);
            for (String alias : place.aliases()) {
                claim(owner, located.line(), "aliases", alias, place);
            }
        }
    }

    private void claim(Map<String, String> owner, long line, String column, String name, Place place) {
        String before = owner.putIfAbsent(LoadedTables.plain(name), place.name());
        if (before != null) {
            faults.add(
                    PlaceTable.NAME,
                    line,
                    column,
                    "\"%s\" already means %s.".formatted(name, before),
                    "Keep it in one row; if it can mean either, make it a row of its own with all theatres.");
        }
    }

    /** A token with two meanings is marked ambiguous in every row. */
    void abbreviations(List<Located<Abbreviation>> abbreviations) {
        Map<String, Located<Abbreviation>> first = new HashMap<>();
        for (var located : abbreviations) {
            Abbreviation abbreviation = located.value();
            var before = first.putIfAbsent(LoadedTables.plain(abbreviation.token()), located);
            if (before == null) {
                continue;
            }
            if (before.value().expansion().equals(abbreviation.expansion())
                    && before.value().kind().equals(abbreviation.kind())) {
                faults.add(
                        AbbreviationTable.NAME,
                        located.line(),
                        "token",
                        "\"%s\" with this meaning stands in line %d already."
                                .formatted(abbreviation.token(), before.line()),
                        "Take one of the two rows out.");
            } else if (!abbreviation.ambiguous() || !before.value().ambiguous()) {
                faults.add(
                        AbbreviationTable.NAME,
                        located.line(),
                        "ambiguous",
                        "\"%s\" has another meaning in line %d, but is not marked ambiguous in both."
                                .formatted(abbreviation.token(), before.line()),
                        "Write yes in column ambiguous of every row of the token.");
            }
        }
    }

    void papers(
            List<Located<MilitarySpecialty>> specialties,
            List<Located<ProofDocument>> documents,
            List<Located<SeparationCode>> separations,
            List<Located<PayMark>> payMarks) {
        unique(SpecialtyTable.NAME, "number", specialties, MilitarySpecialty::number);
        unique(DocumentTable.NAME, "id", documents, ProofDocument::id);
        unique(SeparationCodeTable.NAME, "code", separations, SeparationCode::code);
        unique(PayMarkTable.NAME, "id", payMarks, PayMark::id);
    }

    /** What brought points is an award or one of the two devices that come up. */
    void scores(List<Located<ScoreFactor>> factors, List<Located<ScoreItem>> items, List<Located<RatingDay>> days) {
        unique(ScoreTables.FACTORS, "id", factors, ScoreFactor::id);
        unique(ScoreTables.ITEMS, "item", items, ScoreItem::item);
        unique(ScoreTables.DAYS, "day", days, day -> day.day().toString());
        for (var located : items) {
            String item = located.value().item();
            if (!DEVICES_THAT_SCORE.contains(item)) {
                knownAward(ScoreTables.ITEMS, located.line(), "item", item);
            }
        }
    }

    private <T> void unique(String table, String column, List<Located<T>> rows, Function<T, String> key) {
        Map<String, Long> lines = new HashMap<>();
        for (var row : rows) {
            String value = key.apply(row.value());
            Long before = lines.putIfAbsent(value, row.line());
            if (before != null) {
                faults.add(
                        table,
                        row.line(),
                        column,
                        "\"%s\" stands in line %d already.".formatted(value, before),
                        "Give one of the two rows another.");
            }
        }
    }

    private void knownAward(String table, long line, String column, String award) {
        if (!awardById.containsKey(award)) {
            unknownAward(table, line, column, award);
        }
    }

    private void unknownAward(String table, long line, String column, String award) {
        if (allAwardsKnown) {
            faults.add(
                    table,
                    line,
                    column,
                    "\"%s\" is not an award.".formatted(award),
                    "Write an id that stands in %s.".formatted(AwardTable.NAME));
        }
    }
}
