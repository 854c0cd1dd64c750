package org.honorsdue.reference;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.history.TheaterWindow;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.reference.paper.PayMark;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.reference.paper.SeparationCode;
import org.honorsdue.reference.score.CriticalScore;
import org.honorsdue.reference.score.RatingDay;
import org.honorsdue.reference.score.ScoreFactor;
import org.honorsdue.reference.score.ScoreItem;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;

/**
 * Every table, checked and immutable.
 *
 * <p>All lists keep the order of their table. Look-ups by id are exact; {@link #place} does not mind letter case, full
 * stops and extra blanks.
 */
public interface Reference {
    /**
     * The tables that come with the program: read at the first call, the same object ever after. Thread-safe.
     *
     * @throws TableFaults with every fault of every table, if one of them is faulty
     */
    static Reference published() {
        return LoadedTables.published();
    }

    /**
     * The tables in a folder, laid out as those of the program ({@code law/awards.csv} and so on). Reads them anew.
     *
     * @throws TableFaults with every fault of every table, if one of them is faulty or missing
     */
    static Reference from(Path folder) {
        return LoadedTables.load(TableSource.folder(folder));
    }

    List<Award> awards();

    Optional<Award> award(String id);

    List<LawClause> clauses();

    /** The clauses of one award; empty for an unknown award. */
    List<LawClause> clausesOf(String award);

    Optional<LawClause> clause(String id);

    List<Campaign> campaigns();

    Optional<Campaign> campaign(String id);

    List<AssaultLanding> assaults();

    /** The three theatres with a campaign medal. */
    List<TheaterWindow> theaters();

    /** Empty only for {@link Theater#CONTINENTAL_US}, which is no theatre. */
    Optional<TheaterWindow> theater(Theater theater);

    List<OccupationArea> occupationAreas();

    List<Place> places();

    /** A place by its name or by one of its aliases. */
    Optional<Place> place(String name);

    List<Abbreviation> abbreviations();

    List<MilitarySpecialty> specialties();

    Optional<MilitarySpecialty> specialty(String number);

    List<ProofDocument> documents();

    Optional<ProofDocument> document(String id);

    List<SeparationCode> separationCodes();

    List<PayMark> payMarks();

    List<ScoreFactor> scoreFactors();

    List<ScoreItem> scoreItems();

    /** The days up to which points were counted, the earliest first. */
    List<RatingDay> ratingDays();

    List<CriticalScore> criticalScores();
}
