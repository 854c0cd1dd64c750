package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.reading.ReadToken;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Dependents;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.School;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Tour.Category;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: titles of the grades and names of the arms as in the Army's own lists of the period, from memory. */
@DisplayName("The short entries")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShortEntriesTest {
    private static <T extends ServiceFact> List<T> facts(Entry entry, String text, Class<T> kind) {
        return ReadAs.facts(ReadAs.entry(entry, text), kind);
    }

    @ParameterizedTest
    @CsvSource({
        "Tec 5, Technician Fifth Grade, ENLISTED",
        "T/5, Technician Fifth Grade, ENLISTED",
        "TECH 4TH GR, Technician Fourth Grade, ENLISTED",
        "T/Sgt, Technical Sergeant, ENLISTED",
        "S/Sgt, Staff Sergeant, ENLISTED",
        "1 st Sgt, First Sergeant, ENLISTED",
        "PVT 1CL, Private First Class, ENLISTED",
        "WOJG, Warrant Officer Junior Grade, WARRANT_OFFICER",
        "Flt O, Flight Officer, WARRANT_OFFICER",
        "2D LT, Second Lieutenant, OFFICER",
        "LT. COL., Lieutenant Colonel, OFFICER"
    })
    void a_grade_is_spelled_out(String typed, String title, Category category) {
        var grade = facts(Entry.GRADE, typed, MilitaryGrade.class).get(0);
        assertThat(grade.title()).isEqualTo(title);
        assertThat(grade.category()).isEqualTo(category);
    }

    @Test
    void a_grade_one_letter_off_is_read_when_only_one_fits() {
        var reading = ReadAs.entry(Entry.GRADE, "PFG");
        assertThat(reading.tokens()).extracting(ReadToken::certainty).containsExactly(Certainty.CORRECTED);
        assertThat(ReadAs.entry(Entry.GRADE, "CPI").facts())
                .as("corporal or captain")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "FA, Field Artillery, false",
        "INF., Infantry, false",
        "TD, Tank Destroyer, false",
        "QMC, Quartermaster Corps, false",
        "Engrs, Corps of Engineers, false",
        "AC, Air Corps, true",
        "A.A.F., Army Air Forces, true",
        "MP, Corps of Military Police, false"
    })
    void an_arm_is_spelled_out(String typed, String arm, boolean air) {
        var read = facts(Entry.ARM, typed, ArmFact.class).get(0);
        assertThat(read.arm()).isEqualTo(arm);
        assertThat(read.airForces()).isEqualTo(air);
    }

    @Test
    void a_womens_corps_shows_the_soldiers_sex() {
        assertThat(facts(Entry.COMPONENT, "WAC", SexFact.class))
                .extracting(SexFact::sex)
                .containsExactly(Sex.FEMALE);
        assertThat(facts(Entry.ARM, "ANC", SexFact.class)).hasSize(1);
        assertThat(facts(Entry.COMPONENT, "AUS", SexFact.class)).isEmpty();
    }

    @Test
    void a_component_is_spelled_out() {
        assertThat(facts(Entry.COMPONENT, "A.U.S.", Component.class))
                .extracting(Component::component)
                .containsExactly("Army of the United States");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Cannoneer 844            | 844  | Cannoneer
            844 Cannoneer            | 844  | Cannoneer
            MOS 745 Rifleman         | 745  | Rifleman
            LIGHT MORTAR CREWMAN 6O7 | 607  | LIGHT MORTAR CREWMAN
            INF UNIT COMDR 1542      | 1542 | INF UNIT COMDR
            COOK 060                 | 060  | COOK
            """)
    void a_specialty_has_its_number_and_its_title(String typed, String number, String title) {
        var read = facts(Entry.MILITARY_SPECIALTY, typed, Specialty.class).get(0);
        assertThat(read.number()).contains(number);
        assertThat(read.title()).isEqualTo(title);
    }

    @Test
    void a_number_alone_takes_its_title_from_the_table_if_the_table_may_be_trusted() {
        assertThat(facts(Entry.MILITARY_SPECIALTY, "745", Specialty.class)
                        .get(0)
                        .title())
                .isEqualToIgnoringCase("Rifleman");
    }

    @Test
    void two_specialties_are_two_facts() {
        assertThat(facts(Entry.MILITARY_SPECIALTY, "Squad Leader 653/ Rifleman 745", Specialty.class))
                .extracting(Specialty::number)
                .containsExactly(Optional.of("653"), Optional.of("745"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1-6-17                        | 1-6-17
            1 6 17                        | 1-6-17
            1 yr 6 mos 17 days            | 1-6-17
            2y 4m 9d                      | 2-4-9
            1-6-l7                        | 1-6-17
            l 6 17                        | 1-6-17
            11 mos 3 days                 | 0-11-3
            None                          | 0-0-0
            CONT 0 10 21 FOREIGN 2 1 14   | 0-10-21 2-1-14
            1-6-17 1-2-18                 | 1-6-17 1-2-18
            """)
    void a_total_is_years_months_and_days(String typed, String expected) {
        assertThat(facts(Entry.LENGTH_OF_SERVICE, typed, ServiceTotal.class).stream()
                        .map(total -> total.years() + "-" + total.months() + "-" + total.days())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(expected);
    }

    @Test
    void of_two_totals_the_second_is_foreign_service() {
        assertThat(facts(Entry.LENGTH_OF_SERVICE, "1-6-17 1-2-18", ServiceTotal.class))
                .extracting(ServiceTotal::kind)
                .containsExactly(ServiceTotal.Kind.CONTINENTAL, ServiceTotal.Kind.FOREIGN);
    }

    @ParameterizedTest
    @CsvSource({"300, 300", "$300 / $100, 300", "THIS PMT 100 TOTAL 200, 200", "$3OO, 300", "$200.00 / $100.00, 200"})
    void the_pay_is_the_total_and_not_the_first_payment(String typed, int dollars) {
        assertThat(facts(Entry.MUSTERING_OUT_PAY, typed, MusteringOutPay.class))
                .extracting(MusteringOutPay::dollars)
                .containsExactly(dollars);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AR 615-365 15 Dec 44 RR 1-1 Conv of Govt | AR 615-365
            CDD SEC II AR 615-361 4 NOV 44           | AR 615-361
            A.R. 6I5-362 DEPENDENCY                  | AR 615-362
            """)
    void the_regulation_is_found_among_the_words_of_the_reason(String typed, String authority) {
        assertThat(facts(Entry.REASON, typed, SeparationReason.class).get(0).authority())
                .contains(authority);
    }

    @Test
    void schools_stand_between_semicolons() {
        assertThat(facts(Entry.SERVICE_SCHOOLS, "PRCHT SCH FT BENNING GA; RADIO SCH", School.class))
                .extracting(School::school)
                .containsExactly("PRCHT SCH FT BENNING GA", "RADIO SCH");
    }

    @Test
    void earlier_enlistments_are_told_from_reserve_time() {
        var prior =
                facts(Entry.PRIOR_SERVICE, "RA 3 Mar 38 to 2 Mar 41; ERC 4 Nov 42 to 12 Mar 43", PriorService.class);
        assertThat(prior)
                .extracting(PriorService::duty)
                .containsExactly(PriorService.Duty.ACTIVE, PriorService.Duty.INACTIVE);
        assertThat(prior.get(0).to()).map(Object::toString).contains("1941-03-02");
    }

    @Test
    void the_character_is_a_rating() {
        assertThat(facts(Entry.CHARACTER, "EXCELLANT", Conduct.class).get(0).character())
                .contains("excellent");
    }

    @Test
    void dependents_are_counted() {
        assertThat(facts(Entry.DEPENDENTS, "2", Dependents.class).get(0).number())
                .isEqualTo(2);
        assertThat(facts(Entry.DEPENDENTS, "None", Dependents.class).get(0).number())
                .isZero();
    }

    @Test
    void an_organization_is_looked_up_and_kept_as_typed() {
        var unit = facts(Entry.ORGANIZATION, "Co B 331st Inf", Assignment.class).get(0);
        assertThat(unit.designation()).isEqualTo("Co B 331st Inf");
        assertThat(unit.units()).as("ids from the company up").isNotEmpty();
        assertThat(unit.atSeparation()).isTrue();
    }

    @Test
    void an_entry_that_is_not_read_is_kept_as_one_token() {
        var reading = ReadAs.entry(Entry.PERMANENT_ADDRESS, " 12 Elm St Springfield ");
        assertThat(reading.tokens()).extracting(ReadToken::text).containsExactly("12 Elm St Springfield");
        assertThat(reading.facts()).isEmpty();
    }

    @Test
    void a_line_of_crossings_is_known_as_such_without_its_entry() {
        assertThat(ReadAs.line("22 AUG 44 ETO 29 AUG 44").crossings()).hasSize(1);
    }

    @Test
    void SS_without_its_entry_keeps_both_meanings() {
        var token = ReadAs.line("SS").tokens().get(0);
        assertThat(token.certainty()).isEqualTo(Certainty.DOUBTFUL);
        assertThat(token.alternatives()).contains("Silver Star");
        assertThat(token.meaning()).isEqualTo("sharpshooter");
    }
}
