package org.honorsdue.reference;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.reference.paper.ProofDocument;

/** Every table, checked and immutable. */
public interface Reference {
    List<Award> awards();

    Optional<Award> award(String id);

    List<LawClause> clauses();

    List<LawClause> clausesOf(String award);

    Optional<LawClause> clause(String id);

    List<Campaign> campaigns();

    Optional<Campaign> campaign(String id);

    List<AssaultLanding> assaults();

    List<Place> places();

    Optional<Place> place(String name);

    List<Abbreviation> abbreviations();

    Optional<MilitarySpecialty> specialty(String number);

    List<ProofDocument> documents();
}
