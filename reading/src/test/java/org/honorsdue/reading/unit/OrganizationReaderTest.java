package org.honorsdue.reading.unit;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.honorsdue.reading.unit.OrganizationReading.Outcome;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.Basis.Certainty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An organization as typed")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OrganizationReaderTest {
    private static final OrganizationReader READER = new OrganizationReader(UnitTables.published());

    private static OrganizationReading read(String typed) {
        return READER.read(typed);
    }

    @Test
    void run_together_it_is_still_company_b_of_the_331st_infantry() {
        assertThat(read("CoB331stInf").ids())
                .containsExactly(
                        "infantry-regiment-331/company-b",
                        "infantry-regiment-331/battalion-1",
                        "infantry-regiment-331",
                        "infantry-division-83");
    }

    @Test
    void a_battery_of_armored_field_artillery_leads_to_its_division() {
        assertThat(read("Btry B 391st AFA Bn").meaning())
                .isEqualTo("Battery B, 391st Armored Field Artillery Battalion, 3rd Armored Division");
    }

    @Test
    void an_l_typed_for_a_one_is_put_right_and_said() {
        var reading = read("Co K 33lst Inf");
        assertThat(reading.unit().orElseThrow().id()).isEqualTo("infantry-regiment-331");
        assertThat(reading.certainty()).isEqualTo(Certainty.CORRECTED);
    }

    @Test
    void a_unit_that_is_not_in_the_tables_is_never_taken_for_another() {
        var reading = read("Co B 531st Inf");
        assertThat(reading.outcome()).isEqualTo(Outcome.NOT_IN_TABLES);
        assertThat(reading.ids()).isEmpty();
        assertThat(reading.nearest())
                .anySatisfy(near -> assertThat(near.unit().id()).isEqualTo("infantry-regiment-331"));
        assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("not in our tables"));
    }

    @Test
    void the_same_number_in_another_arm_is_offered_and_not_chosen() {
        var reading = read("Co B 331st Engr C Bn");
        assertThat(reading.outcome()).isEqualTo(Outcome.NOT_IN_TABLES);
        assertThat(reading.nearest())
                .anySatisfy(near -> assertThat(near.difference()).contains("another kind of unit"));
    }

    @Test
    void a_division_that_never_had_the_regiment_makes_the_reading_doubtful() {
        var reading = read("Co B 331st Inf 84th Div");
        assertThat(reading.certainty()).isEqualTo(Certainty.DOUBTFUL);
        assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("83rd Infantry Division"));
    }

    @Test
    void attached_is_no_contradiction() {
        assertThat(read("Co C 756th Tank Bn attd 3rd Inf Div").certainty()).isEqualTo(Certainty.PLAIN);
    }

    @Test
    void a_division_without_an_arm_is_infantry_where_there_was_one_and_open_where_there_was_none() {
        assertThat(read("83d Div").unit().orElseThrow().id()).isEqualTo("infantry-division-83");
        assertThat(read("11th Div").outcome()).isEqualTo(Outcome.AMBIGUOUS);
        assertThat(read("11th Div").candidates()).hasSize(2);
    }

    @Test
    void a_parent_typed_decides_which_unit_of_that_number_is_meant() {
        assertThat(read("Co F 422nd 106th Div").unit().orElseThrow().id()).isEqualTo("infantry-regiment-422");
        assertThat(read("Co F 422nd").outcome()).isEqualTo(Outcome.AMBIGUOUS);
    }

    @Test
    void a_divisions_own_signal_company_is_found_without_its_number() {
        assertThat(read("Sig Co 83rd Inf Div").unit().orElseThrow().id()).isEqualTo("signal-company-83");
    }

    @Test
    void a_service_company_is_a_part_of_a_regiment_and_no_part_of_the_quartermasters() {
        assertThat(read("331st Inf Sv Co").meaning()).startsWith("Service Company, 331st Infantry Regiment");
        assertThat(read("4193rd QM Serv Co").meaning()).isEqualTo("4193rd Quartermaster Service Company");
    }

    @Test
    void a_company_in_a_battalion_it_did_not_stand_in_is_noted() {
        assertThat(read("Co K 2nd Bn 331st Inf").notes())
                .anySatisfy(note -> assertThat(note).contains("3rd Battalion"));
    }

    @Test
    void an_air_squadron_leads_to_its_group_and_air_force() {
        assertThat(read("358th Bomb Sq 303rd Bomb Gp (H)").ids())
                .containsExactly("bombardment-squadron-358", "bombardment-group-303", "air-force-8");
    }

    @Test
    void headquarters_and_headquarters_squadron_of_an_air_force() {
        assertThat(read("Hq & Hq Sq 8th AF").ids()).containsExactly("air-force-8/headquarters-squadron", "air-force-8");
    }

    @Test
    void a_colored_troops_designation_and_an_apo_do_not_change_the_unit() {
        assertThat(read("Co A 370th Inf (Cld) APO 92").unit().orElseThrow().id())
                .isEqualTo("infantry-regiment-370");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            CO B 331 ST INF 83 RD DIV       | Company B, 331st Infantry Regiment, 83rd Infantry Division
            HQ CO lST BN 331 INF            | Headquarters Company, 1st Battalion, 331st Infantry Regiment, 83rd Infantry Division
            C0. M, 3S9th Inf                | Company M, 359th Infantry Regiment, 90th Infantry Division
            Co"B"33O Inf                    | Company B, 330th Infantry Regiment, 83rd Infantry Division
            Easy Co 506 PIR                 | Company E, 506th Parachute Infantry Regiment, 101st Airborne Division
            Hq Co 3 508 PIR                 | Headquarters Company, 3rd Battalion, 508th Parachute Infantry Regiment, 82nd Airborne Division
            2d Squad 1st Plat Co B 22d Inf  | 2nd Squad, 1st Platoon, Company B, 22nd Infantry Regiment, 4th Infantry Division
            Three Hundred Thirty First Infantry | 331st Infantry Regiment, 83rd Infantry Division
            Wire Sec Hq Btry 39 FA Bn       | Wire Section, Headquarters Battery, 39th Field Artillery Battalion, 3rd Infantry Division
            CC A 4 Armd Div                 | Combat Command A, 4th Armored Division
            36 AIR Co D                     | Company D, 36th Armored Infantry Regiment, 3rd Armored Division
            All American Div                | 82nd Airborne Division
            158 RCT                         | 158th Infantry Regiment
            A/T Co 116th Inf                | Antitank Company, 116th Infantry Regiment, 29th Infantry Division
            H/S Co 1st Engr Bn              | Headquarters and Service Company, 1st Engineer Combat Battalion, 1st Infantry Division
            CoC 1stEngrCBn                  | Company C, 1st Engineer Combat Battalion, 1st Infantry Division
            Co A 41st Arm'd Inf Regt        | Company A, 41st Armored Infantry Regiment, 2nd Armored Division
            Co A Boat Bn 592 EB & SR        | Company A, Boat Battalion, 592nd Engineer Boat and Shore Regiment, 2nd Engineer Special Brigade
            XlV Corps                       | XIV Corps
            42nd Rainbow Div                | 42nd Infantry Division
            232nd Engr C Co                 | 232nd Engineer Combat Company, 442nd Infantry Regiment, 92nd Infantry Division
            364th Bom Sq 305 Gp             | 364th Bombardment Squadron, 305th Bombardment Group, Eighth Air Force
            308 Med Bn Clr Co               | Clearing Company, 308th Medical Battalion, 83rd Infantry Division
            Tr A 26th Cav (Philippine Scouts) | Troop A, 26th Cavalry Regiment (PS)
            """)
    void clerks_typed_it_many_ways(String typed, String meant) {
        assertThat(read(typed).meaning()).isEqualTo(meant);
        assertThat(read(typed).outcome()).isEqualTo(Outcome.FOUND);
    }

    /** Found while trying lines of our own: each named a unit of the tables that was not the one typed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "QM F&B Co 865",
                "M-G Co 180 Inf",
                "37th QM War Dog",
                "27 MP CID",
                "D-504",
                "Co T 116th Inf",
                "Co B 3 31st Inf",
                "Co K 743 Tk Bn",
                "Tk Bn 1st Inf Div",
                "1 Inf Hq Div",
                "1st Prov Tk Bn",
                "1st Abn Sig Co",
                "36 Oper Sig Bn",
                "Avn 1 Engr",
            })
    void what_was_only_half_read_is_never_given_as_sure(String typed) {
        assertThat(read(typed).certainty()).isEqualTo(Certainty.DOUBTFUL);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AAA 482 AW Bn             | 482nd Antiaircraft Artillery Automatic Weapons Battalion
            Btry B 413th AAA 90mm Gun Bn | Battery B, 413th Antiaircraft Artillery Gun Battalion
            1740th Ord S&M Co Avn     | 1740th Ordnance Supply and Maintenance Company (Aviation)
            854th QM Fum & Bath Co    | 854th Quartermaster Fumigation and Bath Company
            989th Engr TB Co          | 989th Engineer Treadway Bridge Company
            Co C 727 ROB              | Company C, 727th Railway Operating Battalion
            5th Port Surg Hosp        | 5th Portable Surgical Hospital
            44th Hosp Ship Compl      | 44th Hospital Ship Complement
            5th Ord BD Sqd            | 5th Ordnance Bomb Disposal Squad
            16th Tow Target Sq        | 16th Tow Target Squadron
            83rd CIC Det              | 83rd Counter Intelligence Corps Detachment
            O'Reilly Gen Hosp         | O'Reilly General Hospital
            """)
    void a_unit_that_is_not_in_the_tables_is_still_written_out(String typed, String meant) {
        assertThat(read(typed).meaning()).isEqualTo(meant);
        assertThat(read(typed).outcome()).isEqualTo(Outcome.NOT_IN_TABLES);
    }

    @Test
    void a_place_of_duty_without_a_number_is_no_unit_of_the_tables() {
        assertThat(read("Sta Hosp Ft Bragg NC").meaning()).isEqualTo("Station Hospital, Fort Bragg");
        assertThat(read("Sta Hosp Ft Bragg NC").outcome()).isEqualTo(Outcome.NO_UNIT);
    }

    @Property
    void a_stray_sign_anywhere_is_answered(
            @ForAll("lines") String typed, @ForAll @IntRange(max = 80) int at, @ForAll("signs") String sign) {
        int place = Math.min(at, typed.length());
        READER.read(typed.substring(0, place) + sign + typed.substring(place));
    }

    @net.jqwik.api.Provide
    net.jqwik.api.Arbitrary<String> signs() {
        return net.jqwik.api.Arbitraries.of(
                "'", "''", "'s", ".", "4.2", "-", "\"", "&", "/", "(", "l", "O", "S", "'B'");
    }

    @Property
    void any_line_at_all_is_answered(@ForAll @StringLength(max = 60) String typed) {
        var reading = READER.read(typed);
        assertThat(reading.outcome() == Outcome.FOUND).isEqualTo(reading.unit().isPresent());
    }

    @Property
    void every_id_given_is_in_the_tables(@ForAll("lines") String typed) {
        for (String id : READER.read(typed).ids()) {
            assertThat(UnitTables.published().unit(id)).as(id).isPresent();
        }
    }

    @net.jqwik.api.Provide
    net.jqwik.api.Arbitrary<String> lines() {
        return net.jqwik.api.Arbitraries.of(
                        "Co",
                        "B",
                        "Btry",
                        "331st",
                        "33lst",
                        "391",
                        "AFA",
                        "Bn",
                        "Inf",
                        "Hq",
                        "&",
                        "83d",
                        "Div",
                        "Med",
                        "Det",
                        "506",
                        "PIR",
                        "3rd",
                        "/",
                        "(",
                        ")",
                        "QM",
                        "Trk",
                        "8th",
                        "AF",
                        "Sq",
                        "l",
                        "attd",
                        "Ft",
                        "Corps",
                        "XX",
                        "Engr",
                        "C",
                        "Arty",
                        "APO",
                        "Americal")
                .list()
                .ofMaxSize(9)
                .map(words -> String.join(" ", words));
    }
}
