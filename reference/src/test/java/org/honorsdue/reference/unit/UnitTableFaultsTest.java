package org.honorsdue.reference.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.reference.table.TableFault;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Faults in the tables of units, all at once")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitTableFaultsTest {
    private final Map<String, String> tables = new HashMap<>(Map.of(
            "unit/units.csv",
            """
            id,kind,number,name,nickname,aliases,theater,note,source,grade
            infantry-regiment-999,infantry-regiment,999,999th Infantry Regiment,,,,,memory,memory
            infantry-division-99,infantry-division,99,99th Infantry Division,,,,,memory,memory
            """,
            "unit/memberships.csv",
            """
            unit,parent,from,to,relation,note,source,grade
            infantry-regiment-999,infantry-division-99,1942,1945-09,assigned,,memory,memory
            """,
            "unit/unit_campaigns.csv",
            """
            unit,campaigns,note,source,grade
            infantry-division-99,EA-RHI; EA-CEN,,memory,memory
            """,
            "unit/unit_assaults.csv",
            """
            unit,parts,campaign,place,from,to,means,reach,note,source,grade
            infantry-regiment-999,,EA-NOR,Omaha Beach,1944-06-06,1944-06-06,amphibious,whole,,memory,memory
            """,
            "unit/unit_awards.csv",
            """
            unit,parts,award,action,from,to,order,as_named,note,source,grade
            infantry-regiment-999,battalion-2,distinguished-unit-citation,Somewhere,1944-12,1944-12,,2nd Battalion,,memory,memory
            """,
            "unit/whereabouts.csv",
            """
            unit,from,to,place,area,note,source,grade
            infantry-division-99,1945-05-09,1945-08,Germany,germany,,memory,memory
            """,
            "unit/overseas.csv",
            """
            unit,arrived,arrived_at,entered_combat,returned,inactivated,fields_read,note,source,grade
            infantry-division-99,1944-10,England,1944-11-09,,,,,memory,memory
            """,
            "unit/patches.csv",
            """
            unit,shape,description,approved,note,source,grade
            infantry-division-99,shield,a checkered band,,,memory,memory
            """,
            "unit/lettered_companies.csv",
            """
            kind,battalion,letters,note,source,grade
            infantry-regiment,1,A; B; C; D,,memory,memory
            """));

    private TableSource source() {
        return path -> Optional.ofNullable(tables.get(path))
                .map(text -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private String faults() {
        var refused = catchThrowableOfType(TableFaults.class, () -> UnitTables.load(source()));
        assertThat(refused).as("the tables were accepted").isNotNull();
        return String.join("\n", refused.faults().stream().map(TableFault::text).toList());
    }

    private void replace(String table, String from, String to) {
        assertThat(tables.get(table)).contains(from);
        tables.put(table, tables.get(table).replace(from, to));
    }

    @Test
    void sound_tables_are_loaded() {
        assertThat(UnitTables.load(source()).units()).hasSize(2);
    }

    @Test
    void a_missing_table_a_bad_date_and_an_unknown_kind_are_reported_together() {
        tables.remove("unit/patches.csv");
        replace("unit/memberships.csv", "1945-09,", "1945-13,");
        replace("unit/units.csv", "infantry-regiment,999", "infantry-regimnet,999");
        assertThat(faults())
                .contains("patches.csv: The table is missing")
                .contains("memberships.csv line 2, column to: \"1945-13\" is not a date")
                .contains("units.csv line 2, column kind: \"infantry-regimnet\" is not one of the words");
    }

    @Test
    void a_row_on_a_unit_that_is_not_in_the_table_of_units_is_refused() {
        replace("unit/unit_awards.csv", "infantry-regiment-999", "infantry-regiment-998");
        assertThat(faults()).contains("infantry-regiment-998 is not in units.csv");
    }

    @Test
    void a_unit_cannot_belong_to_itself() {
        tables.put(
                "unit/memberships.csv",
                tables.get("unit/memberships.csv")
                        + "infantry-division-99,infantry-regiment-999,,,assigned,,memory,memory\n");
        assertThat(faults()).contains("would belong to itself");
    }

    @Test
    void an_id_must_carry_the_number_and_stand_once() {
        replace("unit/units.csv", "infantry-regiment,999,", "infantry-regiment,998,");
        assertThat(faults()).contains("does not carry the number 998");
    }

    @Test
    void dates_that_run_backwards_are_refused() {
        replace("unit/memberships.csv", "1942,1945-09", "1945-09,1942");
        assertThat(faults()).contains("The end lies before the start");
    }

    @Test
    void a_part_that_is_no_part_is_refused() {
        replace("unit/unit_awards.csv", "battalion-2", "2nd Battalion");
        assertThat(faults()).contains("is not a part of a unit");
    }

    @Test
    void one_letter_cannot_stand_in_two_battalions() {
        tables.put(
                "unit/lettered_companies.csv",
                tables.get("unit/lettered_companies.csv") + "infantry-regiment,2,D; E,,memory,memory\n");
        assertThat(faults()).contains("Letter D stands in two battalions");
    }
}
