package org.honorsdue.reference.insignia;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.insignia.DeviceDesign.WornOn;
import org.honorsdue.reference.table.TableFault;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The tables of insignia")
@DisplayNameGeneration(ReplaceUnderscores.class)
class InsigniaTablesTest {
    private final InsigniaTables tables = InsigniaTables.published();

    @Test
    void load_once() {
        assertThat(InsigniaTables.published()).isSameAs(tables);
    }

    @Test
    void hold_only_ribbons_whose_stripes_add_up_to_one_and_three_eighths_inches() {
        assertThat(tables.ribbons()).hasSize(31).allSatisfy(ribbon -> {
            assertThat(ribbon.width()).isEqualTo(Inches.parse("1 3/8"));
            assertThat(ribbon.stripes().stream().map(RibbonStripe::drawn).reduce(Inches.ZERO, Inches::plus))
                    .isEqualTo(ribbon.width());
        });
    }

    @Test
    void draw_another_width_than_the_published_one_in_a_single_ribbon_and_say_why() {
        var repaired = tables.ribbons().stream()
                .filter(ribbon -> ribbon.stripes().stream()
                        .anyMatch(stripe -> !stripe.drawn().equals(stripe.published())))
                .toList();
        assertThat(repaired).extracting(RibbonDesign::id).containsExactly("distinguished-flying-cross");
        assertThat(repaired.get(0).note()).contains("1/32 short");
    }

    @Test
    void know_every_ribbon_that_an_award_of_the_law_can_have() {
        assertThat(tables.ribbons())
                .filteredOn(ribbon -> ribbon.kind() != RibbonDesign.Kind.EARLIER_MEDAL)
                .allSatisfy(ribbon ->
                        assertThat(Reference.published().award(ribbon.id())).isPresent());
    }

    @Test
    void give_no_row_of_memory_a_publication_as_its_source() {
        assertThat(tables.ribbons()).flatExtracting(RibbonDesign::stripes).allSatisfy(row -> {
            if (row.provenance().grade() == Grade.MEMORY) {
                assertThat(row.provenance().source()).isEqualTo("memory");
            }
        });
    }

    /** DA Pam 670-1, 26 January 2021, para 22-5a, with the other services' decorations left out. */
    @Test
    void order_decorations_as_the_regulation_lists_them() {
        assertThat(tables.wearOrder())
                .filteredOn(order -> order.block() == WearOrder.Block.DECORATIONS)
                .isSortedAccordingTo(Comparator.comparingInt(WearOrder::present))
                .extracting(WearOrder::award)
                .containsExactly(
                        "medal-of-honor",
                        "distinguished-service-cross",
                        "distinguished-service-medal",
                        "silver-star",
                        "legion-of-merit",
                        "distinguished-flying-cross",
                        "soldiers-medal",
                        "bronze-star-medal",
                        "purple-heart",
                        "air-medal",
                        "army-commendation-medal");
    }

    /** 32 CFR 578.61(a), 2008 edition: 5/16 inch on the ribbon, 13/32 inch on the drape. */
    @Test
    void size_oak_leaf_clusters_for_ribbon_and_drape() {
        assertThat(tables.device("bronze-oak-leaf-cluster", WornOn.RIBBON)
                        .orElseThrow()
                        .width())
                .isEqualTo(Inches.of(5, 16));
        assertThat(tables.device("bronze-oak-leaf-cluster", WornOn.DRAPE)
                        .orElseThrow()
                        .width())
                .isEqualTo(Inches.of(13, 32));
        assertThat(tables.device("germany-clasp", WornOn.RIBBON)).isEmpty();
    }

    @Test
    void refuse_faulty_tables_with_every_fault_at_once() {
        TableSource broken = path -> {
            String text = text(path);
            return Optional.of(stream(
                    switch (path) {
                        case "insignia/colors.csv" -> text.replace("scarlet,67111,#C8202F", "scarlet,67111,red");
                        case "insignia/stripes.csv" ->
                            text.replace("purple-heart,2,1 1/8,1 1/8,purple", "purple-heart,2,1 1/4,1 1/4,lilac");
                        case "insignia/devices.csv" ->
                            text.replace("arrowhead,ribbon,bronze,1/8", "arrowhead,ribbon,bronze,0.125");
                        case "insignia/precedence.csv" -> text.replace("silver-star,", "silver-stars,");
                        default -> text;
                    }));
        };
        var refused = catchThrowableOfType(TableFaults.class, () -> InsigniaTables.load(broken));
        List<String> says = refused.faults().stream().map(TableFault::text).toList();
        assertThat(says)
                .anyMatch(fault -> fault.contains("colors.csv") && fault.contains("\"red\" is not a shade"))
                .anyMatch(fault -> fault.contains("stripes.csv") && fault.contains("\"lilac\" is not in colors.csv"))
                .anyMatch(fault -> fault.contains("purple-heart") && fault.contains("add up to 1/4 in"))
                .anyMatch(fault -> fault.contains("devices.csv") && fault.contains("\"0.125\" is not a length"))
                .anyMatch(fault -> fault.contains("\"silver-stars\" has no ribbon"))
                .anyMatch(fault -> fault.contains("\"silver-star\" has no place in the order"));
    }

    @Test
    void report_a_missing_table() {
        var refused = catchThrowableOfType(
                TableFaults.class, () -> InsigniaTables.load(path -> Optional.<InputStream>empty()));
        assertThat(refused).hasMessageContaining("ribbons.csv").hasMessageContaining("The table is missing");
    }

    private static String text(String path) throws IOException {
        try (InputStream in = TableSource.beside(Reference.class).open(path).orElseThrow()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
