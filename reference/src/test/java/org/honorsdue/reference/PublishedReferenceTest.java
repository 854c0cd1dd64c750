package org.honorsdue.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.honorsdue.reference.history.Place;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The tables of the program")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PublishedReferenceTest {
    private final Reference reference = Reference.published();

    @Test
    void load_once_and_are_the_same_for_everybody() {
        assertThat(Reference.published()).isSameAs(reference);
    }

    @Test
    void find_an_award_and_its_clauses_by_id() {
        assertThat(reference.award("eame-campaign-medal").orElseThrow().name())
                .isEqualTo("European-African-Middle Eastern Campaign Medal");
        assertThat(reference.clausesOf("eame-campaign-medal"))
                .extracting("id")
                .contains("eame-campaign-medal/window", "eame-campaign-medal/campaign-star");
        assertThat(reference.award("no-such-medal")).isEmpty();
        assertThat(reference.clausesOf("no-such-medal")).isEmpty();
    }

    @Test
    void know_from_which_day_a_year_at_home_counted_for_the_american_campaign_medal() {
        var yearAtHome =
                reference.clause("american-campaign-medal/year-at-home").orElseThrow();
        assertThat(yearAtHome.inForceOn(LocalDate.of(1946, 3, 14))).isFalse();
        assertThat(yearAtHome.inForceOn(LocalDate.of(1946, 3, 15))).isTrue();
    }

    @Test
    void find_a_place_by_its_name_or_alias_however_it_is_typed() {
        assertThat(reference.place("E.T.O.")).isEqualTo(reference.place("ETO"));
        assertThat(reference.place("  ger ").orElseThrow().occupation()).isEqualTo(Place.Occupation.GERMANY);
        assertThat(reference.place("Aust").orElseThrow().theaters())
                .containsExactlyInAnyOrder(Theater.EAME, Theater.ASIATIC_PACIFIC);
        assertThat(reference.place("Erewhon")).isEmpty();
    }
}
