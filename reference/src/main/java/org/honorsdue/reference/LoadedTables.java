package org.honorsdue.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import org.honorsdue.reference.score.CriticalScore;
import org.honorsdue.reference.score.RatingDay;
import org.honorsdue.reference.score.ScoreFactor;
import org.honorsdue.reference.score.ScoreItem;
import org.honorsdue.reference.score.ScoreTables;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.jspecify.annotations.Nullable;

/** The tables as loaded, with their indexes. */
final class LoadedTables implements Reference {
    private static volatile @Nullable Reference publishedOnce;

    private final List<Award> awards;
    private final List<LawClause> clauses;
    private final List<Campaign> campaigns;
    private final List<AssaultLanding> assaults;
    private final List<TheaterWindow> theaters;
    private final List<OccupationArea> occupationAreas;
    private final List<Place> places;
    private final List<Abbreviation> abbreviations;
    private final List<MilitarySpecialty> specialties;
    private final List<ProofDocument> documents;
    private final List<SeparationCode> separationCodes;
    private final List<PayMark> payMarks;
    private final List<ScoreFactor> scoreFactors;
    private final List<ScoreItem> scoreItems;
    private final List<RatingDay> ratingDays;
    private final List<CriticalScore> criticalScores;

    private final Map<String, Award> awardById;
    private final Map<String, LawClause> clauseById;
    private final Map<String, List<LawClause>> clausesByAward;
    private final Map<String, Campaign> campaignById;
    private final Map<String, Place> placeByName;
    private final Map<String, MilitarySpecialty> specialtyByNumber;
    private final Map<String, ProofDocument> documentById;

    /** Reads, notes faults, and indexes what was read; {@link #load} refuses the result if there was any fault. */
    private LoadedTables(TableSource source, FaultList faults) {
        var awardRows = AwardTable.read(source, faults);
        var clauseRows = ClauseTable.read(source, faults);
        var campaignRows = CampaignTable.read(source, faults);
        var assaultRows = AssaultTable.read(source, faults);
        var theaterRows = TheaterTable.read(source, faults);
        var occupationRows = OccupationTable.read(source, faults);
        var placeRows = PlaceTable.read(source, faults);
        var abbreviationRows = AbbreviationTable.read(source, faults);
        var specialtyRows = SpecialtyTable.read(source, faults);
        var documentRows = DocumentTable.read(source, faults);
        var separationRows = SeparationCodeTable.read(source, faults);
        var payRows = PayMarkTable.read(source, faults);
        var factorRows = ScoreTables.factors(source, faults);
        var itemRows = ScoreTables.items(source, faults);
        var dayRows = ScoreTables.days(source, faults);
        var criticalRows = ScoreTables.critical(source, faults);

        var cross = new CrossCheck(faults, awardRows);
        cross.laws(clauseRows);
        cross.campaigns(campaignRows, theaterRows);
        cross.assaults(assaultRows, campaignRows);
        cross.occupation(occupationRows);
        cross.places(placeRows);
        cross.abbreviations(abbreviationRows);
        cross.papers(specialtyRows, documentRows, separationRows, payRows);
        cross.scores(factorRows, itemRows, dayRows);

        awards = values(awardRows);
        clauses = values(clauseRows);
        campaigns = values(campaignRows);
        assaults = values(assaultRows);
        theaters = values(theaterRows);
        occupationAreas = values(occupationRows);
        places = values(placeRows);
        abbreviations = values(abbreviationRows);
        specialties = values(specialtyRows);
        documents = values(documentRows);
        separationCodes = values(separationRows);
        payMarks = values(payRows);
        scoreFactors = values(factorRows);
        scoreItems = values(itemRows);
        ratingDays = values(dayRows);
        criticalScores = values(criticalRows);

        awardById = index(awards, Award::id);
        clauseById = index(clauses, LawClause::id);
        clausesByAward = byAward(clauses);
        campaignById = index(campaigns, Campaign::id);
        placeByName = indexPlaces(places);
        specialtyByNumber = index(specialties, MilitarySpecialty::number);
        documentById = index(documents, ProofDocument::id);
    }

    /** The tables of the program. A faulty table throws at every call, so that nobody goes on without it. */
    static Reference published() {
        Reference loaded = publishedOnce;
        if (loaded == null) {
            synchronized (LoadedTables.class) {
                loaded = publishedOnce;
                if (loaded == null) {
                    loaded = load(TableSource.beside(Reference.class));
                    publishedOnce = loaded;
                }
            }
        }
        return loaded;
    }

    /**
     * Reads and cross-checks every table of a source.
     *
     * @throws TableFaults with every fault found
     */
    static Reference load(TableSource source) {
        var faults = new FaultList();
        var loaded = new LoadedTables(source, faults);
        faults.refuseIfAny();
        return loaded;
    }

    private static <T> List<T> values(List<Located<T>> located) {
        var values = new ArrayList<T>(located.size());
        for (var row : located) {
            values.add(row.value());
        }
        return List.copyOf(values);
    }

    private static Map<String, List<LawClause>> byAward(List<LawClause> clauses) {
        var grouped = new HashMap<String, List<LawClause>>();
        for (LawClause clause : clauses) {
            grouped.computeIfAbsent(clause.award(), award -> new ArrayList<>()).add(clause);
        }
        grouped.replaceAll((award, ofAward) -> List.copyOf(ofAward));
        return grouped;
    }

    private static <T> Map<String, T> index(List<T> values, Function<T, String> key) {
        var index = new HashMap<String, T>();
        for (T value : values) {
            index.put(key.apply(value), value);
        }
        return index;
    }

    private static Map<String, Place> indexPlaces(List<Place> places) {
        var index = new HashMap<String, Place>();
        for (Place place : places) {
            index.put(plain(place.name()), place);
            for (String alias : place.aliases()) {
                index.put(plain(alias), place);
            }
        }
        return index;
    }

    /** A name without what clerks vary: letter case, full stops, extra blanks. */
    static String plain(String name) {
        var plain = new StringBuilder(name.length());
        boolean gap = false;
        for (int at = 0; at < name.length(); at++) {
            char letter = name.charAt(at);
            if (letter == '.' || Character.isWhitespace(letter)) {
                gap = !plain.isEmpty();
            } else {
                if (gap) {
                    plain.append(' ');
                    gap = false;
                }
                plain.append(letter);
            }
        }
        return plain.toString().toUpperCase(Locale.ROOT);
    }

    @Override
    public List<Award> awards() {
        return awards;
    }

    @Override
    public Optional<Award> award(String id) {
        return Optional.ofNullable(awardById.get(id));
    }

    @Override
    public List<LawClause> clauses() {
        return clauses;
    }

    @Override
    public List<LawClause> clausesOf(String award) {
        return clausesByAward.getOrDefault(award, List.of());
    }

    @Override
    public Optional<LawClause> clause(String id) {
        return Optional.ofNullable(clauseById.get(id));
    }

    @Override
    public List<Campaign> campaigns() {
        return campaigns;
    }

    @Override
    public Optional<Campaign> campaign(String id) {
        return Optional.ofNullable(campaignById.get(id));
    }

    @Override
    public List<AssaultLanding> assaults() {
        return assaults;
    }

    @Override
    public List<TheaterWindow> theaters() {
        return theaters;
    }

    @Override
    public Optional<TheaterWindow> theater(Theater theater) {
        return theaters.stream().filter(window -> window.theater() == theater).findFirst();
    }

    @Override
    public List<OccupationArea> occupationAreas() {
        return occupationAreas;
    }

    @Override
    public List<Place> places() {
        return places;
    }

    @Override
    public Optional<Place> place(String name) {
        return Optional.ofNullable(placeByName.get(plain(name)));
    }

    @Override
    public List<Abbreviation> abbreviations() {
        return abbreviations;
    }

    @Override
    public List<MilitarySpecialty> specialties() {
        return specialties;
    }

    @Override
    public Optional<MilitarySpecialty> specialty(String number) {
        return Optional.ofNullable(specialtyByNumber.get(number));
    }

    @Override
    public List<ProofDocument> documents() {
        return documents;
    }

    @Override
    public Optional<ProofDocument> document(String id) {
        return Optional.ofNullable(documentById.get(id));
    }

    @Override
    public List<SeparationCode> separationCodes() {
        return separationCodes;
    }

    @Override
    public List<PayMark> payMarks() {
        return payMarks;
    }

    @Override
    public List<ScoreFactor> scoreFactors() {
        return scoreFactors;
    }

    @Override
    public List<ScoreItem> scoreItems() {
        return scoreItems;
    }

    @Override
    public List<RatingDay> ratingDays() {
        return ratingDays;
    }

    @Override
    public List<CriticalScore> criticalScores() {
        return criticalScores;
    }
}
