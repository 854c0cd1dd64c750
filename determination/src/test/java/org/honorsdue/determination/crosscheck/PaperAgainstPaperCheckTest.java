package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("First paper against second")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PaperAgainstPaperCheckTest {
    private final Check check = new PaperAgainstPaperCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier first() {
        return enlisted("1941-02-03", "1945-11-11")
                .named("Fairweather, Orrin T")
                .born("1919-05-01");
    }

    private static Soldier then(Soldier soldier, String entered) {
        return soldier.paper(Tour.Category.ENLISTED, entered, "1948-11-11");
    }

    @Test
    void re_enlistment_on_the_day_of_discharge_or_after_agrees() {
        assertThat(on(then(first(), "1945-11-11")))
                .extracting(Crosscheck::outcome)
                .containsOnly(AGREES);
        assertThat(on(then(first(), "1945-11-12")))
                .extracting(Crosscheck::outcome)
                .containsOnly(AGREES);
    }

    @Test
    void two_days_of_overlap_do_not_fit() {
        assertThat(on(then(first(), "1945-11-10")))
                .extracting(Crosscheck::outcome)
                .containsOnly(AGREES);
        var result = on(then(first(), "1945-11-09")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("2 days of overlap");
    }

    @Test
    void the_order_of_the_papers_does_not_matter() {
        var turned = enlisted("1945-11-12", "1948-11-11").paper(Tour.Category.ENLISTED, "1941-02-03", "1945-11-11");
        assertThat(on(turned)).extracting(Crosscheck::outcome).containsOnly(AGREES);
    }

    @Test
    void a_birth_a_day_apart_does_not_fit() {
        var result = on(then(first(), "1945-11-12").born("1919-05-02")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).containsExactly(Entry.DATE_OF_BIRTH);
    }

    @Test
    void another_surname_does_not_fit_and_another_spelling_of_the_first_name_does() {
        assertThat(on(then(first(), "1945-11-12").named("FAIRWEATHER O T")))
                .extracting(Crosscheck::outcome)
                .containsOnly(AGREES);
        assertThat(on(then(first(), "1945-11-12").named("Merriweather, Orrin T"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void one_paper_alone_says_nothing() {
        assertThat(on(first())).isEmpty();
    }

    @Test
    void a_wound_on_the_first_paper_and_None_on_the_second_do_not_fit() {
        var forgot = then(first().wounded("1944-07-12", "France"), "1945-11-12").none(Entry.WOUNDS);
        assertThat(on(forgot))
                .filteredOn(result -> result.outcome() == DISAGREES)
                .singleElement()
                .satisfies(result -> assertThat(result.entries()).containsExactly(Entry.WOUNDS));
    }

    @Test
    void None_on_a_paper_made_out_before_the_wound_is_no_contradiction() {
        var soldier = enlisted("1939-02-03", "1942-02-03")
                .none(Entry.WOUNDS)
                .paper(Tour.Category.ENLISTED, "1942-02-04", "1945-11-11")
                .wounded("1944-07-12", "France");
        assertThat(on(soldier)).extracting(Crosscheck::outcome).containsOnly(AGREES);
    }
}
