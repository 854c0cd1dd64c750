package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.reference.insignia.DeviceDesign;
import org.honorsdue.reference.insignia.DeviceDesign.WornOn;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;

/**
 * Devices side by side on one ribbon, centred as a whole, in the order of AR 670-1, 2005, para 29-12: from the
 * wearer's right, which is the viewer's left, arrowhead or letter, then silver, then bronze.
 *
 * <p>The regulation gives order and centring and no spacing. Ours is 1/16 inch between devices, less where the ribbon
 * has no room.
 *
 * @param devices from the viewer's left
 */
public record DeviceRow(List<Placed> devices) {
    /** The most oak leaf clusters side by side (AR 670-1, 2005, para 29-12a). */
    private static final int MOST_CLUSTERS = 4;

    private static final Inches USUAL_GAP = Inches.of(1, 16);
    private static final Inches LEAST_EDGE = Inches.of(1, 32);

    public DeviceRow {
        devices = List.copyOf(devices);
    }

    /**
     * A device at its place.
     *
     * @param center from the left edge of the ribbon
     * @param loops of a Good Conduct clasp; 0 for anything else
     */
    public record Placed(DeviceDesign design, Inches center, int loops) {}

    /** One device before it has a place. */
    private record Item(DeviceDesign design, int loops) {}

    /**
     * Lays out what a finding says is worn on its ribbon bar. Usually one row; a second and further rows, each for a
     * ribbon of its own beside the first, when more than four clusters or more than the width holds are due. Always at
     * least one row, which may be empty. Devices that are not worn on the bar (the clasps of the Army of Occupation
     * Medal, the star on a parachutist badge) are left out; the Foreign Service clasp shows as the bronze star that
     * stands for it.
     */
    public static List<DeviceRow> rows(List<WornDevice> worn, Inches ribbon, InsigniaTables tables) {
        return rows(items(worn, WornOn.RIBBON, tables), ribbon, MOST_CLUSTERS);
    }

    /**
     * Lays out the same on the drape of a full-size medal, the lowest row first: clusters three side by side and more
     * above them (32 CFR 578.61(a), 2008 edition). Clasps with words are not in it.
     */
    public static List<DeviceRow> onDrape(List<WornDevice> worn, Inches ribbon, InsigniaTables tables) {
        return rows(items(worn, WornOn.DRAPE, tables), ribbon, MOST_CLUSTERS - 1);
    }

    private static List<DeviceRow> rows(List<Item> items, Inches ribbon, int mostClusters) {
        var waiting = new ArrayList<Item>(items);
        waiting.sort(Comparator.comparingInt(item -> item.design.place()));
        var rows = new ArrayList<DeviceRow>();
        do {
            rows.add(row(take(waiting, ribbon, mostClusters), ribbon));
        } while (!waiting.isEmpty());
        return rows;
    }

    /** The first items that one ribbon holds, taken out of those waiting. */
    private static List<Item> take(List<Item> waiting, Inches ribbon, int mostClusters) {
        Inches room = ribbon.minus(LEAST_EDGE.times(2));
        var taken = new ArrayList<Item>();
        Inches used = Inches.ZERO;
        int clusters = 0;
        while (!waiting.isEmpty()) {
            Item item = waiting.get(0);
            boolean cluster = item.design.device().endsWith("oak-leaf-cluster");
            Inches with = used.plus(item.design.width());
            // A clasp is as wide as the ribbon and stands alone.
            if (!taken.isEmpty() && (with.isLongerThan(room) || cluster && clusters == mostClusters)) {
                break;
            }
            taken.add(waiting.remove(0));
            used = with;
            clusters += cluster ? 1 : 0;
        }
        return taken;
    }

    private static DeviceRow row(List<Item> items, Inches ribbon) {
        if (items.isEmpty()) {
            return new DeviceRow(List.of());
        }
        Inches metal = items.stream().map(item -> item.design.width()).reduce(Inches.ZERO, Inches::plus);
        Inches gap = Inches.ZERO;
        if (items.size() > 1) {
            Inches free = ribbon.minus(LEAST_EDGE.times(2)).minus(metal).max(Inches.ZERO);
            gap = USUAL_GAP.min(free.dividedBy(items.size() - 1L));
        }
        Inches whole = metal.plus(gap.times(items.size() - 1L));
        Inches left = ribbon.minus(whole).half();
        var placed = new ArrayList<Placed>();
        for (Item item : items) {
            placed.add(new Placed(item.design, left.plus(item.design.width().half()), item.loops));
            left = left.plus(item.design.width()).plus(gap);
        }
        return new DeviceRow(placed);
    }

    private static List<Item> items(List<WornDevice> worn, WornOn wornOn, InsigniaTables tables) {
        var items = new ArrayList<Item>();
        int bronzeStars = count(worn, Device.BRONZE_SERVICE_STAR)
                + (wornOn == WornOn.RIBBON ? count(worn, Device.FOREIGN_SERVICE_CLASP) : 0);
        int silverStars = count(worn, Device.SILVER_SERVICE_STAR) + bronzeStars / 5;
        int bronzeClusters = count(worn, Device.BRONZE_OAK_LEAF_CLUSTER);
        int silverClusters = count(worn, Device.SILVER_OAK_LEAF_CLUSTER) + bronzeClusters / 5;
        add(items, Math.min(1, count(worn, Device.ARROWHEAD)), Device.ARROWHEAD, wornOn, tables);
        add(items, Math.min(1, count(worn, Device.LETTER_V)), Device.LETTER_V, wornOn, tables);
        add(items, silverStars, Device.SILVER_SERVICE_STAR, wornOn, tables);
        add(items, bronzeStars % 5, Device.BRONZE_SERVICE_STAR, wornOn, tables);
        add(items, silverClusters, Device.SILVER_OAK_LEAF_CLUSTER, wornOn, tables);
        add(items, bronzeClusters % 5, Device.BRONZE_OAK_LEAF_CLUSTER, wornOn, tables);
        add(items, count(worn, Device.PALM), Device.PALM, wornOn, tables);
        add(items, count(worn, Device.STAR_UNSPECIFIED), Device.STAR_UNSPECIFIED, wornOn, tables);
        int loops = count(worn, Device.GOOD_CONDUCT_CLASP);
        if (loops > 0) {
            items.add(new Item(design(Device.GOOD_CONDUCT_CLASP, wornOn, tables), loops));
        }
        return items;
    }

    private static void add(List<Item> items, int count, Device device, WornOn wornOn, InsigniaTables tables) {
        for (int i = 0; i < count; i++) {
            items.add(new Item(design(device, wornOn, tables), 0));
        }
    }

    private static DeviceDesign design(Device device, WornOn wornOn, InsigniaTables tables) {
        return tables.device(device.id(), wornOn)
                .orElseThrow(() -> new IllegalStateException(
                        "The table of devices has no row for %s on a %s.".formatted(device.id(), wornOn)));
    }

    private static int count(List<WornDevice> worn, Device device) {
        return worn.stream()
                .filter(one -> one.device() == device)
                .mapToInt(WornDevice::count)
                .sum();
    }

    public boolean isEmpty() {
        return devices.isEmpty();
    }

    /** In words, from the viewer's left: {@code arrowhead, silver service star, 2 bronze service stars}. */
    public String says() {
        var words = new ArrayList<String>();
        for (int i = 0; i < devices.size(); ) {
            Placed placed = devices.get(i);
            int same = i;
            while (same < devices.size() && devices.get(same).design.equals(placed.design)) {
                same++;
            }
            words.add(words(placed, same - i));
            i = same;
        }
        return String.join(", ", words);
    }

    private static String words(Placed placed, int count) {
        if (placed.loops > 0) {
            int award = placed.loops;
            return "%s clasp with %d loop%s"
                    .formatted(
                            clasp(award).name().toLowerCase(Locale.ROOT),
                            loopsShown(award),
                            loopsShown(award) == 1 ? "" : "s");
        }
        String name = placed.design.device().equals("star")
                ? "star of unknown metal"
                : placed.design.device().equals("letter-v")
                        ? "letter V"
                        : placed.design.device().replace('-', ' ');
        return count == 1 ? name : count + " " + name + "s";
    }

    /** The metal of the Good Conduct clasp for the so-manieth award (AR 670-1, 2005, table 29-2). */
    static Metal clasp(int award) {
        return award <= 5 ? Metal.BRONZE : award <= 10 ? Metal.SILVER : Metal.GOLD;
    }

    /** Loops on the clasp for the so-manieth award: 2 to 5 on bronze, 1 to 5 on silver and on gold. */
    static int loopsShown(int award) {
        return award <= 5 ? award : (award - 1) % 5 + 1;
    }

    /** The devices drawn over a ribbon of a height in inches. */
    List<Mark> marks(double ribbonHeight) {
        var marks = new ArrayList<Mark>();
        for (Placed placed : devices) {
            marks.add(drawing(placed).centred(placed.center.decimal(), ribbonHeight / 2));
        }
        return marks;
    }

    /** One device in its own size. */
    public static Drawing drawing(Placed placed) {
        DeviceDesign design = placed.design;
        int loops = placed.loops;
        double width = design.width().decimal();
        double height = design.height().decimal();
        return switch (Device.ofId(design.device()).orElseThrow()) {
            case BRONZE_SERVICE_STAR -> DeviceArt.star(width, Metal.BRONZE);
            case SILVER_SERVICE_STAR -> DeviceArt.star(width, Metal.SILVER);
            case ARROWHEAD -> DeviceArt.arrowhead(width, height);
            case BRONZE_OAK_LEAF_CLUSTER -> DeviceArt.oakLeaves(width, height, Metal.BRONZE);
            case SILVER_OAK_LEAF_CLUSTER -> DeviceArt.oakLeaves(width, height, Metal.SILVER);
            case LETTER_V -> DeviceArt.letterV(width, height);
            case GOOD_CONDUCT_CLASP -> DeviceArt.loops(width, height, loopsShown(loops), clasp(loops));
            case PALM -> DeviceArt.palm(width, height);
            case STAR_UNSPECIFIED -> DeviceArt.hollowStar(width);
            default -> throw new IllegalArgumentException(design.device() + " is not drawn on a ribbon bar.");
        };
    }
}
