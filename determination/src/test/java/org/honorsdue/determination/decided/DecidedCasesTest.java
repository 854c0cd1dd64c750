package org.honorsdue.determination.decided;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Decisions of the Army and Air Force boards for correction of military records, by docket number. The facts are those
 * that the part of the record which was read states, in our words; what it does not state is not supplied. Where the
 * board had evidence that we lack, the finding must be open and name that evidence.
 */
@DisplayName("Cases decided by the correction boards")
@DisplayNameGeneration(ReplaceUnderscores.class)
class DecidedCasesTest {
    private static final String HEART = "purple-heart";
    private static final String PRISONER = "prisoner-of-war-medal";
    private static final String VICTORY = "ww2-victory-medal";
    private static final String AMERICAN = "american-campaign-medal";
    private static final String EUROPEAN = "eame-campaign-medal";
    private static final String PACIFIC = "asiatic-pacific-campaign-medal";
    private static final String CONDUCT = "army-good-conduct-medal";
    private static final String BRONZE_STAR = "bronze-star-medal";
    private static final String UNIT_CITATION = "distinguished-unit-citation";
    private static final String AIR_MEDAL = "air-medal";

    /** A paper of which only these entries are quoted in the record. */
    private static Case quoted(Case soldier, Entry... entries) {
        return soldier.showing(entries);
    }

    @Nested
    @DisplayName("ABCMR 9510773: captured on 4 May 1945, exchanged on 5 May 1945")
    class Docket_9510773 {
        private Case soldier() {
            return quoted(enlisted("", "1945-10-20"), Entry.SEPARATED, Entry.FOREIGN_SERVICE)
                    .total(org.honorsdue.service.fact.ServiceTotal.Kind.FOREIGN, 1, 10, 17);
        }

        @Test
        void before_the_statements_were_believed_the_medal_is_open_and_the_tool_names_what_the_board_had() {
            assertThat(soldier()
                            .says("we were captured together on 4 May 1945 and exchanged on 5 May 1945")
                            .says("I was his platoon leader; he was captured on 4 May 1945")
                            .on(PRISONER))
                    .isUnsettled()
                    .wants("captivity")
                    .settledBy("sworn-statements");
        }

        @Test
        void granted_for_one_day_once_the_captivity_is_taken_as_shown() {
            assertThat(soldier().captive("1945-05-04", "1945-05-05", "").on(PRISONER))
                    .isAuthorized()
                    .counts(1);
        }
    }

    @Nested
    @DisplayName("ABCMR 9607853: the truck ran off a hillside at Oran")
    class Docket_9607853 {
        @Test
        void refused_the_injury_was_real_but_no_act_of_the_enemy() {
            assertThat(quoted(enlisted("1942-09-23", "1945-10-07"), Entry.INDUCTED, Entry.SEPARATED, Entry.WOUNDS)
                            .noneTyped(Entry.WOUNDS)
                            .hospital(
                                    Evidence.HospitalAdmission.Cause.NON_BATTLE,
                                    "1943-05-29",
                                    "injured when his truck ran off a hillside at Oran, accidental")
                            .hospital(Evidence.HospitalAdmission.Cause.NOT_STATED, "1945-01", "malaria")
                            .hospital(Evidence.HospitalAdmission.Cause.NOT_STATED, "1945-03", "malaria")
                            .on(HEART))
                    .isNotAuthorized()
                    .rests("accident", Verdict.NOT_MET);
        }
    }

    @Nested
    @DisplayName("ABCMR AR20090007142: killed in action on 25 November 1944")
    class Docket_AR20090007142 {
        private Case soldier() {
            return quoted(enlisted("1943-02-23", ""), Entry.ENTERED_ACTIVE_SERVICE)
                    .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-25");
        }

        @Test
        void the_report_of_death_is_enough_for_the_Purple_Heart() {
            assertThat(soldier().on(HEART)).isAuthorized().counts(1).rests("killed-or-died-of-wounds", Verdict.MET);
        }

        @Test
        void the_Good_Conduct_Medal_whose_ruling_was_not_read_stays_presumed_for_want_of_an_order() {
            assertThat(soldier().on(CONDUCT)).isPresumed().settledBy("personnel-file");
        }
    }

    @Nested
    @DisplayName("ABCMR AR20210008187: a badge of the Korean War")
    class Docket_AR20210008187 {
        private Case soldier() {
            return enlisted("1951-03-26", "1954-03-11")
                    .claims(HEART)
                    .claims("combat-infantryman-badge")
                    .claims("army-of-occupation-medal")
                    .claims("national-defense-service-medal")
                    .claims(CONDUCT)
                    .wounded("1951-10-07", "Korea");
        }

        @Test
        void the_Bronze_Star_is_refused_for_the_rule_covers_badges_of_the_war_only() {
            assertThat(soldier().on(BRONZE_STAR)).isNotAuthorized();
        }

        @Test
        void no_medal_of_the_war_follows_from_service_after_it() {
            assertThat(soldier().on(VICTORY)).isNotAuthorized();
            assertThat(soldier().on(AMERICAN)).isNotAuthorized();
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2002-00523: frostbite on a mission of 20 December 1943")
    class Docket_BC_2002_00523 {
        private Case paper() {
            return quoted(
                            enlisted("1942-08-26", ""),
                            Entry.ENTERED_ACTIVE_SERVICE,
                            Entry.SERVICE_OUTSIDE_US,
                            Entry.BATTLES_AND_CAMPAIGNS,
                            Entry.DECORATIONS_AND_CITATIONS)
                    .arm("Army Air Forces")
                    .overseas("ETO", "1943-08-20", "", "", "1944-08-06")
                    .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                    .claims("distinguished-flying-cross")
                    .claims(AIR_MEDAL, 4);
        }

        /** What the awards office found: the group's campaigns and its two citations, with his presence. */
        private Case withUnitRecord() {
            return paper().assigned("306th Bomb Group", "1943-09-20", "1944-07-20")
                    .credited("306th Bomb Group", "EA-AOE", "1942-10-09", "1944-06-05")
                    .credited("306th Bomb Group", "EA-NOR", "1944-06-06", "1944-07-24")
                    .credited("306th Bomb Group", "EA-NFR", "1944-07-15", "1944-09-14")
                    .credited("306th Bomb Group", UNIT_CITATION, "1944-01-11", "1944-01-11")
                    .credited("306th Bomb Group", UNIT_CITATION, "1944-02-22", "1944-02-22");
        }

        @Test
        void the_Victory_and_American_Campaign_Medals_were_added() {
            assertThat(paper().on(VICTORY)).isAuthorized().isNotOnPaper();
            assertThat(paper().on(AMERICAN)).isPresumedOrUnsettled().wants("continental-time");
        }

        @Test
        void the_credit_of_the_group_raises_one_star_to_three() {
            assertThat(paper().on(EUROPEAN)).isAuthorized();
            assertThat(withUnitRecord().on(EUROPEAN))
                    .isAuthorized()
                    .isShortOnPaper()
                    .wearsFor(Device.BRONZE_SERVICE_STAR, "Air Offensive, Europe", "Normandy", "Northern France");
        }

        @Test
        void two_citations_of_the_group_are_the_emblem_with_a_cluster() {
            assertThat(withUnitRecord().on(UNIT_CITATION))
                    .isAuthorized()
                    .isNotOnPaper()
                    .counts(2)
                    .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 1);
        }

        @Test
        void the_Good_Conduct_Medal_was_added_on_a_file_we_have_not_seen_so_it_is_open() {
            assertThat(paper().on(CONDUCT)).isPresumedOrUnsettled().settledBy("personnel-file");
        }

        @Test
        void the_Purple_Heart_for_frostbite_whose_ruling_was_not_read_is_open_until_the_combat_is_shown() {
            assertThat(paper().hospital(Evidence.HospitalAdmission.Cause.NOT_STATED, "1943-12-20", "frostbite")
                            .on(HEART))
                    .isUnsettled()
                    .rests("severe-frostbite", Verdict.UNKNOWN);
        }

        @Test
        void the_flying_awards_on_the_paper_are_presumed_until_their_orders_are_seen() {
            assertThat(paper().on(AIR_MEDAL)).isPresumed().counts(4).wears(Device.BRONZE_OAK_LEAF_CLUSTER, 3);
            assertThat(paper().on("distinguished-flying-cross")).isPresumed().wants("award-order");
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2005-02480: an officer who had been an aviation cadet")
    class Docket_BC_2005_02480 {
        private Case soldier() {
            return enlisted("1942-03-24", "1943-01-13")
                    .showing(Entry.ENTERED_ACTIVE_SERVICE)
                    .paper(Tour.Category.OFFICER, "1943-01-14", "1946-01-17")
                    .arm("Army Air Forces")
                    .overseas("England", "", "1944-04-25", "1945-07-25", "")
                    .claims(AIR_MEDAL, 2)
                    .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 2))
                    .claims(AMERICAN, 1, with(Device.BRONZE_OAK_LEAF_CLUSTER, 1))
                    .without(Entry.BATTLES_AND_CAMPAIGNS);
        }

        @Test
        void the_Victory_Medal_was_added() {
            assertThat(soldier().on(VICTORY)).isAuthorized().isNotOnPaper();
        }

        @Test
        void the_Good_Conduct_Medal_from_enlisted_time_is_open_for_the_cadet_time_alone_is_no_year() {
            assertThat(soldier().on(CONDUCT))
                    .isUnsettled()
                    .wants("award-order", "conduct", "service-dates")
                    .settledBy("personnel-file");
        }

        @Test
        void the_cluster_on_the_American_ribbon_is_a_slip_for_the_antisubmarine_star() {
            assertThat(soldier().on(AMERICAN)).isAuthorized().isOnPaper().saying("a clerk's slip for a service star");
        }

        @Test
        void a_further_cluster_of_the_Air_Medal_is_not_read_out_of_a_count_of_missions() {
            assertThat(soldier()
                            .says("26 missions with the 12th Anti-Submarine Squadron")
                            .on(AIR_MEDAL))
                    .counts(2);
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2009-00219: a pilot of the 303d Bombardment Group")
    class Docket_BC_2009_00219 {
        private Case soldier() {
            return officer("", "")
                    .showing(Entry.BATTLES_AND_CAMPAIGNS)
                    .arm("Army Air Forces")
                    .campaigns("EA-ARD", "EA-CEN")
                    .claims(AIR_MEDAL, 6);
        }

        @Test
        void the_Victory_and_European_Medals_were_added() {
            assertThat(soldier().on(VICTORY)).isAuthorized();
            assertThat(soldier().on(EUROPEAN)).isAuthorized();
        }

        @Test
        void the_third_star_and_the_unit_citation_came_from_the_group_and_need_its_credit() {
            var known = soldier()
                    .assigned("303d Bombardment Group", "1944-11-01", "1945-04-30")
                    .credited("303d Bombardment Group", "EA-RHI", "1944-09-15", "1945-03-21");
            assertThat(known.on(EUROPEAN))
                    .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland", "Ardennes-Alsace", "Central Europe");
            assertThat(soldier().on(UNIT_CITATION)).isUnsettled().settledBy("morning-reports", "unit-register");
        }

        @Test
        void the_Flying_Cross_granted_later_by_order_is_open_until_the_order_is_seen() {
            assertThat(soldier().on("distinguished-flying-cross")).isUnsettled().wants("award-order");
            assertThat(soldier()
                            .order("distinguished-flying-cross", "order of 26 June 2003", "2003-06-26")
                            .on("distinguished-flying-cross"))
                    .isAuthorized();
        }

        @Test
        void the_Air_Medal_with_five_clusters_was_shown_and_the_sixth_is_not_added_from_flight_records() {
            assertThat(soldier().says("35 missions by the flight records").on(AIR_MEDAL))
                    .counts(6);
        }

        @Test
        void the_American_Campaign_Medal_is_open_on_what_was_read() {
            assertThat(soldier().on(AMERICAN)).isPresumedOrUnsettled();
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2010-01255-2: five missions or six to a cluster")
    class Docket_BC_2010_01255 {
        private Case soldier() {
            return enlisted("", "").showing().arm("Army Air Forces").says("a cluster was due for each five missions");
        }

        @Test
        void clusters_are_not_read_out_of_missions() {
            assertThat(soldier().on(AIR_MEDAL))
                    .isUnsettled()
                    .wants("award-order")
                    .counts(0);
        }

        @Test
        void the_unit_citation_was_refused_as_not_substantiated_and_is_open_until_unit_and_presence_are_shown() {
            assertThat(soldier().on(UNIT_CITATION)).isUnsettled().wants("unit-credit", "unit-presence");
        }

        @Test
        void the_Good_Conduct_Medal_was_added_on_a_file_we_have_not_seen() {
            assertThat(soldier().on(CONDUCT)).isPresumedOrUnsettled().settledBy("personnel-file");
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2010-01403: in service from 6 April 1943 to 8 October 1945")
    class Docket_BC_2010_01403 {
        private Case soldier() {
            return enlisted("1943-04-06", "1945-10-08")
                    .showing(Entry.ENTERED_ACTIVE_SERVICE, Entry.SEPARATED)
                    .arm("Army Air Forces");
        }

        @Test
        void the_Victory_Medal_was_added() {
            assertThat(soldier().on(VICTORY)).isAuthorized();
        }

        @Test
        void the_American_Campaign_Medal_was_added_on_the_year_at_home_that_we_cannot_see() {
            assertThat(soldier().on(AMERICAN)).isPresumedOrUnsettled().settledBy("separation-paper");
        }

        @Test
        void the_Flying_Cross_is_open_and_only_an_order_would_settle_it() {
            assertThat(soldier().on("distinguished-flying-cross")).isUnsettled().wants("award-order");
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2012-05131: a waist gunner shot down over Berlin on 18 March 1945")
    class Docket_BC_2012_05131 {
        private Case paper() {
            return enlistedOctober1942().arm("Army Air Forces").wounded("1945-03-18", "Berlin");
        }

        private static Case enlistedOctober1942() {
            return ofNoPaper()
                    .enlistedOnly("1942-10-19", "1945-12-06")
                    .showing(Entry.ENLISTED, Entry.SEPARATED, Entry.WOUNDS, Entry.MILITARY_SPECIALTY);
        }

        @Test
        void the_Prisoner_of_War_Medal_was_added() {
            assertThat(paper().captive("1945-03-18", "1945-10-17", "Germany").on(PRISONER))
                    .isAuthorized();
        }

        @Test
        void the_American_Campaign_Medal_was_added_on_time_at_home_that_we_cannot_see() {
            assertThat(paper().on(AMERICAN)).isPresumedOrUnsettled();
        }

        @Test
        void the_Purple_Heart_whose_vote_was_not_read_is_presumed_on_the_papers_own_entry() {
            assertThat(paper().on(HEART)).isPresumed().settledBy("hospital-admission-cards");
        }

        @Test
        void the_wound_over_Berlin_itself_shows_service_in_the_European_theatre() {
            assertThat(paper().on(EUROPEAN)).isAuthorized();
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2012-05447: an Air Medal on the paper and no order")
    class Docket_BC_2012_05447 {
        private Case soldier() {
            return enlisted("1942-10-17", "1945-09-08")
                    .showing(Entry.ENTERED_ACTIVE_SERVICE, Entry.SEPARATED, Entry.DECORATIONS_AND_CITATIONS)
                    .arm("Army Air Forces")
                    .claims(AIR_MEDAL);
        }

        @Test
        void the_entry_alone_is_not_confirmed_and_the_order_is_named() {
            assertThat(soldier().on(AIR_MEDAL))
                    .isPresumed()
                    .isOnPaper()
                    .wants("award-order")
                    .settledBy("unit-general-orders");
        }

        @Test
        void the_Victory_Medal_was_added_and_the_American_Campaign_Medal_is_open() {
            assertThat(soldier().on(VICTORY)).isAuthorized().isNotOnPaper();
            assertThat(soldier().on(AMERICAN)).isPresumedOrUnsettled();
        }

        @Test
        void the_Prisoner_of_War_Medal_and_the_Bronze_Star_rest_on_evidence_the_record_does_not_quote() {
            assertThat(soldier().on(PRISONER)).isUnsettled().wants("captivity");
            assertThat(soldier().on(BRONZE_STAR)).isUnsettled();
        }
    }

    @Nested
    @DisplayName("AFBCMR BC-2014-00354: captured on 7 May 1942, died a prisoner on 26 December 1942")
    class Docket_BC_2014_00354 {
        private Case soldier() {
            return ofNoPaper()
                    .captive("1942-05-07", "1942-12-26", "Philippine Islands")
                    .died(Evidence.Death.Manner.DIED_IN_CAPTIVITY, "1942-12-26");
        }

        private Case withUnitRecord() {
            return soldier()
                    .assigned("24th Pursuit Group", "1941-10-01", "1942-05-07")
                    .credited("24th Pursuit Group", UNIT_CITATION, "1941-12-07", "1942-05-10")
                    .credited("24th Pursuit Group", UNIT_CITATION, "1941-12-08", "1941-12-22")
                    .credited("24th Pursuit Group", UNIT_CITATION, "1942-01-07", "1942-03-08")
                    .credited("24th Pursuit Group", "philippine-presidential-unit-citation", "1941-12-07", "1942-05-10")
                    .credited("24th Pursuit Group", "AP-PHI", "1941-12-07", "1942-05-10");
        }

        @Test
        void captivity_and_death_give_the_Prisoner_Medal_the_Purple_Heart_and_the_Victory_Medal() {
            assertThat(soldier().on(PRISONER)).isAuthorized();
            assertThat(soldier().on(HEART)).isAuthorized();
            assertThat(soldier().on(VICTORY)).isAuthorized();
        }

        @Test
        void being_taken_in_the_islands_gives_the_Pacific_Medal_and_the_Philippine_Defense_Ribbon() {
            assertThat(soldier().on(PACIFIC)).isAuthorized();
            assertThat(soldier().on("philippine-defense-ribbon")).isAuthorized();
        }

        @Test
        void American_Defense_follows_with_the_dates_of_his_unit() {
            assertThat(soldier().on("american-defense-service-medal")).isPresumedOrUnsettled();
            assertThat(withUnitRecord().on("american-defense-service-medal"))
                    .isPresumed()
                    .wants("orders-length");
        }

        @Test
        void the_unit_citation_has_two_clusters_and_the_Philippine_citation_none() {
            assertThat(withUnitRecord().on(UNIT_CITATION))
                    .isAuthorized()
                    .counts(3)
                    .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 2);
            assertThat(withUnitRecord().on("philippine-presidential-unit-citation"))
                    .isAuthorized()
                    .wearsNothing();
        }

        @Test
        void the_Bronze_Star_follows_from_the_unit_citation() {
            assertThat(withUnitRecord().on(BRONZE_STAR)).isPresumedOrAuthorized();
        }
    }
}
