package org.honorsdue.insignia.ribbon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.Found;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;

@Label("Devices on a ribbon bar, whatever they are")
class DeviceRowPropertyTest {
    private static final Inches RIBBON = Inches.parse("1 3/8");
    private static final InsigniaTables TABLES = InsigniaTables.published();

    @Property(tries = 300)
    void no_device_overlaps_another_or_leaves_the_ribbon_and_the_whole_is_centred(
            @ForAll @IntRange(min = 0, max = 2) int arrowheads,
            @ForAll @IntRange(min = 0, max = 2) int silverStars,
            @ForAll @IntRange(min = 0, max = 14) int bronzeStars,
            @ForAll @IntRange(min = 0, max = 1) int letters,
            @ForAll @IntRange(min = 0, max = 3) int silverClusters,
            @ForAll @IntRange(min = 0, max = 9) int bronzeClusters) {
        var worn = new ArrayList<WornDevice>();
        worn.add(Found.worn(arrowheads, Device.ARROWHEAD));
        worn.add(Found.worn(silverStars, Device.SILVER_SERVICE_STAR));
        worn.add(Found.worn(bronzeStars, Device.BRONZE_SERVICE_STAR));
        worn.add(Found.worn(letters, Device.LETTER_V));
        worn.add(Found.worn(silverClusters, Device.SILVER_OAK_LEAF_CLUSTER));
        worn.add(Found.worn(bronzeClusters, Device.BRONZE_OAK_LEAF_CLUSTER));
        for (DeviceRow row : DeviceRow.rows(worn, RIBBON, TABLES)) {
            Inches end = Inches.ZERO;
            Inches first = RIBBON;
            for (DeviceRow.Placed placed : row.devices()) {
                Inches left = placed.center().minus(placed.design().width().half());
                assertThat(left).isGreaterThanOrEqualTo(end);
                first = first.min(left);
                end = placed.center().plus(placed.design().width().half());
            }
            assertThat(end).isLessThanOrEqualTo(RIBBON);
            if (!row.isEmpty()) {
                assertThat(first).isEqualTo(RIBBON.minus(end));
            }
        }
    }
}
