package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.OrderCited;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("What the cross-checks need of the reading")
@DisplayNameGeneration(ReplaceUnderscores.class)
class StarOrMedalTest {
    private final EntryReader reader = new CasefileReader(Reference.published(), UnitReader.none()).entries();

    private <T extends ServiceFact> List<T> facts(Entry entry, String typed, Class<T> kind) {
        return reader.read(entry, typed).facts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void one_bronze_star_on_a_ribbon_is_a_star_and_not_the_medal() {
        var claims = facts(
                Entry.DECORATIONS_AND_CITATIONS,
                "Asiatic-Pacific Theater Ribbon w/1 Bronze Star; Good Conduct Medal",
                AwardClaim.class);
        assertThat(claims)
                .extracting(AwardClaim::award)
                .containsExactly("asiatic-pacific-campaign-medal", "army-good-conduct-medal");
        assertThat(claims.get(0).devices())
                .singleElement()
                .satisfies(worn -> assertThat(worn.count()).isEqualTo(1));
    }

    @Test
    void a_bronze_star_by_itself_stays_the_medal() {
        assertThat(facts(Entry.DECORATIONS_AND_CITATIONS, "Bronze Star; Purple Heart", AwardClaim.class))
                .extracting(AwardClaim::award)
                .containsExactly("bronze-star-medal", "purple-heart");
    }

    @Test
    void the_order_behind_the_campaigns_is_kept() {
        assertThat(facts(Entry.BATTLES_AND_CAMPAIGNS, "Rhineland Central Europe GO 33 WD 45", OrderCited.class))
                .singleElement()
                .satisfies(cited -> {
                    assertThat(cited.order().asTyped()).isEqualTo("GO 33 WD 45");
                    assertThat(cited.order().year()).hasValue(1945);
                });
    }

    @Test
    void an_order_of_an_award_is_not_told_twice() {
        assertThat(facts(Entry.DECORATIONS_AND_CITATIONS, "Purple Heart GO 31 Hq 999 Gen Hosp 44", OrderCited.class))
                .isEmpty();
    }

    @Test
    void None_is_kept_apart_from_a_blank() {
        assertThat(facts(Entry.QUALIFICATIONS, "None", NoneTyped.class)).hasSize(1);
        assertThat(facts(Entry.WOUNDS, "None", NoneTyped.class)).hasSize(1);
        assertThat(facts(Entry.PRIOR_SERVICE, "None", NoneTyped.class)).hasSize(1);
        assertThat(facts(Entry.QUALIFICATIONS, "MM Rifle Aug 43", NoneTyped.class))
                .isEmpty();
    }
}
