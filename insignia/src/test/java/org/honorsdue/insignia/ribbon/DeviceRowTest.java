package org.honorsdue.insignia.ribbon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.insignia.Found.worn;

import java.util.List;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Order and limits: AR 670-1, 2005, para 29-12. Spacing is our own. */
@DisplayName("Devices on a ribbon bar: AR 670-1, para 29-12")
@DisplayNameGeneration(ReplaceUnderscores.class)
class DeviceRowTest {
    private static final Inches RIBBON = Inches.parse("1 3/8");
    private static final InsigniaTables TABLES = InsigniaTables.published();

    private static List<DeviceRow> rows(WornDevice... worn) {
        return DeviceRow.rows(List.of(worn), RIBBON, TABLES);
    }

    private static String says(WornDevice... worn) {
        return String.join(" | ", rows(worn).stream().map(DeviceRow::says).toList());
    }

    @Test
    void arrowhead_then_silver_then_bronze_from_the_wearers_right() {
        assertThat(says(
                        worn(2, Device.BRONZE_SERVICE_STAR),
                        worn(1, Device.SILVER_SERVICE_STAR),
                        worn(1, Device.ARROWHEAD)))
                .isEqualTo("arrowhead, silver service star, 2 bronze service stars");
    }

    @Test
    void letter_v_then_silver_then_bronze_clusters() {
        assertThat(says(
                        worn(1, Device.BRONZE_OAK_LEAF_CLUSTER),
                        worn(1, Device.SILVER_OAK_LEAF_CLUSTER),
                        worn(1, Device.LETTER_V)))
                .isEqualTo("letter V, silver oak leaf cluster, bronze oak leaf cluster");
    }

    @Test
    void five_bronze_stars_are_one_silver() {
        assertThat(says(worn(4, Device.BRONZE_SERVICE_STAR))).isEqualTo("4 bronze service stars");
        assertThat(says(worn(5, Device.BRONZE_SERVICE_STAR))).isEqualTo("silver service star");
        assertThat(says(worn(6, Device.BRONZE_SERVICE_STAR))).isEqualTo("silver service star, bronze service star");
    }

    @Test
    void one_arrowhead_and_one_letter_however_many_are_said() {
        assertThat(says(worn(3, Device.ARROWHEAD))).isEqualTo("arrowhead");
        assertThat(says(worn(2, Device.LETTER_V))).isEqualTo("letter V");
    }

    @Test
    void four_clusters_stand_on_one_ribbon_and_a_fifth_on_a_second() {
        assertThat(rows(worn(4, Device.BRONZE_OAK_LEAF_CLUSTER))).hasSize(1);
        assertThat(says(worn(1, Device.SILVER_OAK_LEAF_CLUSTER), worn(4, Device.BRONZE_OAK_LEAF_CLUSTER)))
                .isEqualTo("silver oak leaf cluster, 3 bronze oak leaf clusters | bronze oak leaf cluster");
    }

    @Test
    void the_foreign_service_clasp_is_a_bronze_star_on_the_bar_and_occupation_clasps_are_nothing() {
        assertThat(says(worn(1, Device.FOREIGN_SERVICE_CLASP))).isEqualTo("bronze service star");
        assertThat(rows(worn(1, Device.GERMANY_CLASP), worn(1, Device.JAPAN_CLASP)))
                .singleElement()
                .satisfies(row -> assertThat(row.isEmpty()).isTrue());
    }

    /** AR 670-1, 2005, table 29-2. */
    @Test
    void good_conduct_loops_count_on_bronze_to_five_and_then_again_from_one_on_silver_and_gold() {
        assertThat(says(worn(2, Device.GOOD_CONDUCT_CLASP))).isEqualTo("bronze clasp with 2 loops");
        assertThat(says(worn(5, Device.GOOD_CONDUCT_CLASP))).isEqualTo("bronze clasp with 5 loops");
        assertThat(says(worn(6, Device.GOOD_CONDUCT_CLASP))).isEqualTo("silver clasp with 1 loop");
        assertThat(says(worn(11, Device.GOOD_CONDUCT_CLASP))).isEqualTo("gold clasp with 1 loop");
    }

    @Test
    void one_device_stands_in_the_middle() {
        assertThat(rows(worn(1, Device.BRONZE_SERVICE_STAR))
                        .get(0)
                        .devices()
                        .get(0)
                        .center())
                .isEqualTo(Inches.of(11, 16));
    }

    /** Hand arithmetic: 3/16 stars with 1/16 between have centres 1/4 apart about 11/16. */
    @Test
    void three_stars_stand_a_quarter_inch_apart() {
        assertThat(rows(worn(3, Device.BRONZE_SERVICE_STAR)).get(0).devices())
                .extracting(DeviceRow.Placed::center)
                .containsExactly(Inches.of(7, 16), Inches.of(11, 16), Inches.of(15, 16));
    }
}
