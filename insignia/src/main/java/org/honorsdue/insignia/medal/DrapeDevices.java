package org.honorsdue.insignia.medal;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.ribbon.DeviceRow;
import org.honorsdue.insignia.ribbon.Metal;
import org.honorsdue.reference.insignia.DeviceDesign.WornOn;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;

/**
 * Devices on the drape of a full-size medal: clusters in a row of three with a fourth above the middle one (32 CFR
 * 578.61(a), 2008 edition), the rest side by side, clasps across the drape with the earlier one above (the last from
 * memory).
 */
final class DrapeDevices {
    /** Middle of the row of devices, and of the highest clasp, from the top of the drape: our own. */
    private static final double ROW = 0.55;

    private static final double CLASP = 0.36;
    private static final double CLASP_PITCH = 0.24;

    private static final List<Device> CLASPS =
            List.of(Device.FOREIGN_SERVICE_CLASP, Device.GERMANY_CLASP, Device.JAPAN_CLASP);

    private DrapeDevices() {}

    /** The widest device; nothing when there is none. */
    static Inches widest(List<WornDevice> worn, InsigniaTables tables) {
        return worn.stream()
                .flatMap(one -> tables.device(one.device().id(), WornOn.DRAPE).stream())
                .map(design -> design.width())
                .reduce(Inches.ZERO, Inches::max);
    }

    /** Marks over a drape that begins at 0,0. */
    static List<Mark> marks(List<WornDevice> worn, Inches ribbon, InsigniaTables tables) {
        var marks = new ArrayList<Mark>();
        double middle = ribbon.half().decimal();
        double y = ROW;
        for (DeviceRow row : DeviceRow.onDrape(worn, ribbon, tables)) {
            for (DeviceRow.Placed placed : row.devices()) {
                marks.add(DeviceRow.drawing(placed).centred(placed.center().decimal(), y));
            }
            y -= 0.29;
        }
        y = CLASP;
        for (Device clasp : CLASPS) {
            if (worn.stream().anyMatch(one -> one.device() == clasp && one.count() > 0)) {
                var design = tables.device(clasp.id(), WornOn.DRAPE).orElseThrow();
                marks.add(clasp(clasp, design.width().decimal(), design.height().decimal())
                        .centred(middle, y));
                y += CLASP_PITCH;
            }
        }
        return marks;
    }

    private static Drawing clasp(Device clasp, double width, double height) {
        Metal metal = Metal.BRONZE;
        Outline bar = Outline.rectangle(0, 0, width, height);
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(
                bar,
                new Paint.Along(
                        0,
                        0,
                        0,
                        height,
                        List.of(
                                new Paint.Stop(0, metal.light()),
                                new Paint.Stop(0.5, metal.body()),
                                new Paint.Stop(1, metal.shade())))));
        marks.add(Mark.line(Outline.rectangle(0.006, 0.006, width - 0.012, height - 0.012), metal.edge(), 0.012));
        String word = clasp == Device.FOREIGN_SERVICE_CLASP
                ? "FOREIGN SERVICE"
                : clasp == Device.GERMANY_CLASP ? "GERMANY" : "JAPAN";
        marks.add(Lettering.line(word, width / 2, height * 0.24, height * 0.52, height * 0.1, metal.edge()));
        if (clasp == Device.FOREIGN_SERVICE_CLASP) {
            for (double x : new double[] {height * 0.6, width - height * 0.6}) {
                marks.add(Mark.area(Outline.star(x, height * 0.52, height * 0.34), metal.edge()));
            }
        }
        return new Drawing(width, height, marks);
    }
}
