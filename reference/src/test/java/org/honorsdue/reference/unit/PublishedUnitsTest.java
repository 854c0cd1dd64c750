package org.honorsdue.reference.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Units against what was published of them: the id, what is asked, what the publication says, the publication. Lineages
 * are those of the Center of Military History; the first half of the list was read for this test and not taken from the
 * notes the tables began with. "cited" asks for the first and last day of a Distinguished Unit Citation; those orders
 * and citations were read for this test as well.
 */
@DisplayName("Units against published lineages, orders of battle and citations")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PublishedUnitsTest {
    private static final String PUBLISHED = """
            signal-operation-battalion-17 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 17th Signal Battalion
            signal-construction-battalion-25 | campaigns | Rhineland; Central Europe | lineage of the 25th Signal Battalion
            signal-construction-battalion-29 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 29th Signal Battalion
            signal-construction-battalion-30 | campaigns | Naples-Foggia; Rome-Arno; North Apennines; Po Valley | lineage of the 30th Signal Battalion
            signal-construction-battalion-35 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 35th Signal Battalion
            signal-construction-battalion-36 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 36th Signal Battalion
            signal-construction-battalion-40 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 40th Signal Battalion
            signal-construction-battalion-41 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 41st Signal Battalion
            signal-construction-battalion-43 | campaigns | Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 43rd Signal Battalion
            signal-construction-battalion-44 | campaigns | Rhineland; Central Europe | lineage of the 44th Signal Battalion
            signal-battalion-50 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 50th Signal Battalion
            signal-battalion-51 | campaigns | Sicily; Naples-Foggia; Rome-Arno; North Apennines; Po Valley | lineage of the 51st Signal Battalion
            signal-battalion-52 | campaigns | New Guinea; Leyte; Luzon; Southern Philippines | lineage of the 52nd Signal Battalion
            signal-battalion-53 | campaigns | Algeria-French Morocco; Tunisia; Sicily; Naples-Foggia; Rome-Arno; North Apennines; Po Valley | lineage of the 53rd Signal Battalion
            signal-battalion-54 | campaigns | Ardennes-Alsace; Central Europe | lineage of the 54th Signal Battalion
            signal-battalion-56 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 56th Signal Battalion
            signal-battalion-57 | campaigns | Naples-Foggia; Anzio; Rome-Arno; Southern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 57th Signal Battalion
            signal-battalion-58 | campaigns | New Guinea; Luzon | lineage of the 58th Signal Battalion
            signal-battalion-62 | campaigns | Tunisia; Rome-Arno; North Apennines; Po Valley | lineage of the 62nd Signal Battalion
            signal-battalion-63 | campaigns | Naples-Foggia; Rome-Arno; North Apennines; Po Valley | lineage of the 63rd Signal Battalion
            signal-battalion-69 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 69th Signal Battalion
            signal-construction-battalion-78 | campaigns | Luzon | lineage of the 78th Signal Battalion
            signal-battalion-98 | campaigns | New Guinea; Leyte; Luzon; Southern Philippines | lineage of the 98th Signal Battalion
            signal-construction-battalion-102 | campaigns | North Apennines; Po Valley | lineage of the 102nd Signal Battalion
            signal-battalion-112 | campaigns | Rome-Arno; Southern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 112th Signal Battalion
            signal-service-battalion-3186 | campaigns | Rhineland; Central Europe | lineage of the 72nd Signal Battalion
            signal-service-battalion-3907 | campaigns | Rhineland; Central Europe | lineage of the 39th Signal Battalion
            signal-company-1 | campaigns | Algeria-French Morocco; Tunisia; Sicily; Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 121st Signal Battalion
            signal-company-2 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 122nd Signal Battalion
            signal-company-3 | campaigns | Algeria-French Morocco; Tunisia; Sicily; Naples-Foggia; Anzio; Rome-Arno; Southern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 123rd Signal Battalion
            signal-company-4 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 124th Signal Battalion
            signal-company-82 | campaigns | Sicily; Naples-Foggia; Normandy; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 82nd Signal Battalion
            signal-company-101 | campaigns | Normandy; Rhineland; Ardennes-Alsace; Central Europe | lineage of the 501st Signal Battalion
            armored-signal-company-141 | campaigns | Algeria-French Morocco; Tunisia; Naples-Foggia; Anzio; Rome-Arno; North Apennines; Po Valley | lineage of the 141st Signal Battalion
            signal-company-110 | campaigns | North Apennines; Po Valley | lineage of the 10th Signal Battalion
            infantry-division-83 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-regiment-331 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle, 83rd Infantry Division
            signal-company-2 | award | belgian-fourragere | lineage of the 122nd Signal Battalion
            signal-company-82 | award | netherlands-orange-lanyard | lineage of the 82nd Signal Battalion
            signal-company-101 | award | netherlands-orange-lanyard | lineage of the 501st Signal Battalion
            signal-battalion-58 | award | philippine-presidential-unit-citation | lineage of the 58th Signal Battalion
            glider-infantry-regiment-326 | parent | airborne-division-13 | Army Ground Forces fact sheet (1945)
            infantry-regiment-169 | parent | infantry-division-43 | encyclopedia article on the 43rd Infantry Division
            infantry-division-30 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-90 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            armored-division-4 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-95 | campaigns | Northern France; Rhineland; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-102 | campaigns | Rhineland; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-87 | campaigns | Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            armored-division-9 | campaigns | Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            armored-division-10 | campaigns | Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-45 | campaigns | Sicily; Naples-Foggia; Anzio; Rome-Arno; Southern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-66 | campaigns | Northern France | Army Almanac (1950), combat chronicle
            infantry-division-69 | campaigns | Rhineland; Central Europe | Army Almanac (1950), combat chronicle
            infantry-regiment-117 | parent | infantry-division-30 | Army Almanac (1950), component elements
            infantry-regiment-120 | parent | infantry-division-30 | Army Almanac (1950), component elements
            infantry-regiment-16 | parent | infantry-division-1 | Army Almanac (1950), component elements
            infantry-regiment-110 | parent | infantry-division-28 | Army Almanac (1950), component elements
            infantry-regiment-116 | parent | infantry-division-29 | Army Almanac (1950), component elements
            field-artillery-battalion-5 | parent | infantry-division-1 | Army Almanac (1950), component elements
            infantry-regiment-161 | parent | infantry-division-25 | Army Almanac (1950), component elements
            infantry-regiment-165 | parent | infantry-division-27 | Army Almanac (1950), component elements
            bombardment-group-450 | cited | 1944-02-25 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-44 | cited | 1943-05-14 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-305 | cited | 1943-04-04 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-96 | cited | 1944-04-09 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-310 | cited | 1945-03-10 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-417 | cited | 1944-12-30 to 1945-01-02 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-417 | campaigns | New Guinea; Leyte; Luzon; Southern Philippines | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-80 | cited | 1944-03-27 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-56 | cited | 1944-02-20 to 1944-03-09 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-4 | cited | 1944-03-05 to 1944-04-24 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-406 | cited | 1944-12-23 to 1944-12-27 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-353 | cited | 1944-09-17 to 1944-09-23 | Maurer, Air Force Combat Units of World War II (1961)
            troop-carrier-group-317 | cited | 1945-02-16 to 1945-02-17 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-43 | cited | 1943-03-02 to 1943-03-04 | WD GO 76, 1945, citation
            bombardment-group-376 | cited | 1942-05 to 1943-08-17 | WD GO 23, 1944, citation
            bombardment-group-16 | cited | 1945-07-29 to 1945-08-06 | Twentieth Air Force GO 13, 23 Jan 1946, citation
            infantry-regiment-313 | award | french-fourragere | Decision 48, 16 Aug 1949, of the French Minister of National Defense
            infantry-regiment-16 | award | french-croix-de-guerre | DA GO 43, 1950, Decision 279
            tank-battalion-745 | award | belgian-fourragere | 1st Infantry Division GO 203, 18 Dec 1945
            armored-infantry-regiment-36 | award | belgian-fourragere | DA GO 43, 1950, Decree 1330
            infantry-regiment-424 | award | belgian-fourragere | Decree 7253, 13 Jul 1950
            fighter-group-332 | cited | 1945-03-24 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-82 | cited | 1943-08-25 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-404 | cited | 1944-09-10 | Maurer, Air Force Combat Units of World War II (1961)
            parachute-infantry-regiment-504 | cited | 1945-04-06 to 1945-04-07 | citation of Company A, 504th Parachute Infantry
            fighter-group-370 | cited | 1944-12-02 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-27 | cited | 1944-09-04 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-320 | cited | 1945-03-15 | Maurer, Air Force Combat Units of World War II (1961)
            fighter-group-371 | cited | 1945-03-15 to 1945-03-21 | Maurer, Air Force Combat Units of World War II (1961)
            bombardment-group-47 | cited | 1943-02-22 | Twelfth Air Force GO 277, 23 Dec 1944, citation
            bombardment-group-7 | cited | 1945-03-19 | Tenth Air Force GO 201, 5 May 1945, citation
            bombardment-group-100 | cited | 1943-08-17 | Maurer, Air Force Combat Units of World War II (1961)
            tank-battalion-761 | cited | 1944-10-31 to 1945-05-06 | DA GO 5, 10 Apr 1978
            parachute-infantry-regiment-507 | cited | 1944-06-06 to 1944-06-09 | First Army GO 46, 10 Aug 1944, citation
            infantry-regiment-350 | cited | 1944-09-27 to 1944-10-03 | WD GO 10, 1945, citation
            infantry-regiment-16 | cited | 1943-04-29 to 1943-04-30 | WD GO 60, 1944, citation
            infantry-regiment-313 | cited | 1944-12-31 to 1945-01-21 | citation of the 3rd Battalion, 313th Infantry
            ranger-battalion-1 | cited | 1943-09-10 to 1943-09-18 | citation of the 1st and 3rd Ranger Battalions
            ranger-battalion-3 | cited | 1943-09-10 to 1943-09-18 | citation of the 1st and 3rd Ranger Battalions
            glider-field-artillery-battalion-319 | cited | 1943-09-10 to 1943-09-18 | citation of the 1st and 3rd Ranger Battalions
            airborne-antiaircraft-battalion-80 | cited | 1943-09-10 to 1943-09-18 | citation of the 1st and 3rd Ranger Battalions
            armored-division-9 | cited | 1945-02-28 to 1945-03-09 | citation of Combat Command B, memorial plate at Remagen
            armored-infantry-regiment-36 | cited | 1944-12-10 to 1944-12-13 | WD GO 24, 6 Apr 1945
            fighter-group-20 | cited | 1944-04-08 | 1st Air Division GO 250, 25 Mar 1945
            bombardment-group-94 | cited | 1944-01-11 | WD GO 30, 8 Apr 1944
            bombardment-group-387 | cited | 1944-12-23 | Ninth Air Force order of 28 Jul 1945
            fighter-group-354 | cited | 1943-11-04 to 1944-05-15 | citation of the 354th Fighter Group
            fighter-group-367 | cited | 1945-03-19 | Air Force Combat Units of World War II (Maurer, 1961)
            infantry-regiment-397 | cited | 1945-04-05 to 1945-04-11 | WD GO 101, 1946, citation
            infantry-regiment-398 | cited | 1945-04-03 to 1945-04-12 | WD GO 11, 1946, citation
            infantry-regiment-162 | cited | 1943-06-29 to 1943-09-12 | WD GO 57, 16 Jul 1945
            armored-regiment-32 | cited | 1944-09-03 to 1944-09-04 | 3rd Armored Division GO 85, 2 Jul 1945
            bombardment-group-6 | cited | 1945-05-25 | citation of the 6th Bombardment Group
            bombardment-group-39 | cited | 1945-05-23 to 1945-05-29 | Twentieth Air Force GO 13, 23 Jan 1946, citation
            bombardment-group-498 | cited | 1944-12-13 | Twentieth Air Force GO 106, 13 Nov 1945
            infantry-regiment-415 | award | distinguished-unit-citation | Army Ground Forces fact sheet, 104th Infantry Division
            airborne-division-101 | award | distinguished-unit-citation | citation for Bastogne, unit list
            field-artillery-battalion-969 | award | distinguished-unit-citation | citation for Bastogne, unit list
            tank-battalion-17 | award | distinguished-unit-citation | DA GO 48, 12 Jul 1948
            tank-battalion-31 | award | distinguished-unit-citation | DA GO 48, 12 Jul 1948
            armored-infantry-battalion-23 | award | distinguished-unit-citation | DA GO 48, 12 Jul 1948
            cavalry-reconnaissance-squadron-87 | award | distinguished-unit-citation | DA GO 48, 12 Jul 1948
            armored-field-artillery-battalion-275 | award | distinguished-unit-citation | DA GO 48, 12 Jul 1948
            infantry-regiment-148 | award | distinguished-unit-citation | War Department General Orders, 1946
            airborne-division-82 | award | netherlands-military-order-of-william | royal decree 30 of 8 October 1945
            infantry-regiment-422 | campaigns | Northern France; Rhineland; Ardennes-Alsace | table of the 106th Division drawn from DA Pam 672-1
            infantry-regiment-34 | campaigns | New Guinea; Leyte; Luzon; Southern Philippines | lineage of the 34th Infantry
            infantry-regiment-27 | campaigns | Central Pacific; Guadalcanal; Northern Solomons; Luzon | lineage of the 27th Infantry
            infantry-division-31 | campaigns | New Guinea; Southern Philippines | Army Almanac (1950), combat chronicle
            infantry-division-33 | campaigns | New Guinea; Luzon | Army Almanac (1950), combat chronicle
            infantry-division-93 | campaigns | New Guinea; Northern Solomons; Bismarck Archipelago | Army Almanac (1950), combat chronicle
            infantry-division-40 | campaigns | Bismarck Archipelago; Southern Philippines; Luzon | Army Almanac (1950), combat chronicle
            infantry-division-35 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-78 | campaigns | Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-80 | campaigns | Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-86 | campaigns | Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-91 | campaigns | Rome-Arno; North Apennines; Po Valley | Army Almanac (1950), combat chronicle
            infantry-division-94 | campaigns | Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-division-104 | campaigns | Northern France; Rhineland; Central Europe | Army Almanac (1950), combat chronicle
            armored-division-6 | campaigns | Normandy; Northern France; Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            armored-division-13 | campaigns | Rhineland; Central Europe | Army Almanac (1950), combat chronicle
            airborne-division-17 | campaigns | Rhineland; Ardennes-Alsace; Central Europe | Army Almanac (1950), combat chronicle
            infantry-regiment-317 | parent | infantry-division-80 | Army Ground Forces fact sheet (1945)
            infantry-regiment-130 | parent | infantry-division-33 | Army Ground Forces fact sheet (1945)
            infantry-regiment-417 | parent | infantry-division-76 | Army Ground Forces fact sheet (1945)
            field-artillery-battalion-213 | parent | infantry-division-40 | Army Ground Forces fact sheet (1945)
            field-artillery-battalion-363 | parent | infantry-division-96 | Army Ground Forces fact sheet (1945)
            tank-battalion-714 | parent | armored-division-12 | Army Ground Forces fact sheet (1945)
            glider-infantry-regiment-188 | parent | airborne-division-11 | Army Ground Forces fact sheet (1945)
            armored-infantry-battalion-52 | parent | armored-division-9 | Army Ground Forces fact sheet (1947)
            medical-battalion-331 | parent | infantry-division-106 | Army Ground Forces fact sheet (1947)
            engineer-combat-battalion-303 | parent | infantry-division-78 | European order of battle (1945)
            engineer-combat-battalion-327 | parent | infantry-division-102 | European order of battle (1945)
            """;

    private static final UnitHistory HISTORY = new UnitHistory(UnitTables.published(), Reference.published());

    static Stream<Said> published() {
        return PUBLISHED.lines().map(line -> {
            String[] cells = line.split(" \\| ");
            return new Said(cells[0].strip(), cells[1], cells[2], cells[3].strip());
        });
    }

    record Said(String unit, String asked, String says, String publication) {}

    @ParameterizedTest
    @MethodSource("published")
    void the_tables_say_what_was_published(Said said) {
        assertThat(UnitTables.published().unit(said.unit())).as(said.unit()).isPresent();
        switch (said.asked()) {
            case "campaigns" ->
                assertThat(HISTORY.campaigns(said.unit()).stream()
                                .map(held -> held.row().campaign().name())
                                .toList())
                        .as(said.publication())
                        .containsExactlyInAnyOrderElementsOf(list(said.says()));
            case "parent" ->
                assertThat(UnitTables.published().parentsOf(said.unit()).stream()
                                .map(Membership::parent))
                        .as(said.publication())
                        .contains(said.says());
            case "cited" ->
                assertThat(HISTORY.awards(said.unit()).stream()
                                .map(held -> held.row())
                                .filter(row -> row.award() == UnitAward.Kind.DISTINGUISHED_UNIT_CITATION)
                                .filter(row -> row.provenance().grade() != Grade.MEMORY)
                                .map(row -> row.when().text()))
                        .as(said.publication())
                        .contains(said.says());
            default ->
                assertThat(HISTORY.awards(said.unit()).stream()
                                .filter(held -> held.grade() != Grade.MEMORY)
                                .map(held -> held.row().award().id()))
                        .as(said.publication())
                        .contains(said.says());
        }
    }

    private static List<String> list(String says) {
        return Arrays.stream(says.split(";")).map(String::strip).toList();
    }

    @Test
    void sixty_units_and_more_are_held_against_a_publication() {
        assertThat(published().map(Said::unit).distinct().count()).isGreaterThanOrEqualTo(60);
    }
}
