package org.honorsdue.reference.insignia;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.insignia.DeviceDesign.WornOn;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.jspecify.annotations.Nullable;

/** Every table of insignia, checked and immutable. */
public final class InsigniaTables {
    private static volatile @Nullable InsigniaTables publishedOnce;

    private final List<RibbonColor> colors;
    private final List<RibbonDesign> ribbons;
    private final List<DeviceDesign> devices;
    private final List<WearOrder> wearOrder;
    private final List<MedalDesign> medals;
    private final List<BadgeDesign> badges;
    private final List<DisplayRule> displayRules;
    private final List<FrameSize> frames;
    private final List<ClearDepth> depths;
    private final List<CareNote> careNotes;
    private final List<SleeveDesign> sleeves;
    private final Map<String, RibbonColor> colorByName;
    private final Map<String, RibbonDesign> ribbonById;
    private final Map<String, WearOrder> orderByAward;

    private InsigniaTables(TableSource source, FaultList faults) {
        colors = ColorTable.read(source, faults);
        ribbons = RibbonTables.read(source, faults, colors);
        devices = DeviceTable.read(source, faults, colors);
        wearOrder = WearOrderTable.read(source, faults, ribbons);
        medals = MedalTable.read(source, faults, ribbons);
        badges = DisplayTables.badges(source, faults);
        displayRules = DisplayTables.rules(source, faults);
        frames = DisplayTables.frames(source, faults);
        depths = DisplayTables.depths(source, faults);
        careNotes = DisplayTables.care(source, faults);
        sleeves = DisplayTables.sleeves(source, faults);
        colorByName = index(colors, RibbonColor::name);
        ribbonById = index(ribbons, RibbonDesign::id);
        orderByAward = index(wearOrder, WearOrder::award);
    }

    /**
     * The tables of the program, read at the first call.
     *
     * @throws TableFaults with every fault, at every call, if a table is faulty
     */
    public static InsigniaTables published() {
        InsigniaTables loaded = publishedOnce;
        if (loaded == null) {
            synchronized (InsigniaTables.class) {
                loaded = publishedOnce;
                if (loaded == null) {
                    loaded = load(TableSource.beside(Reference.class));
                    publishedOnce = loaded;
                }
            }
        }
        return loaded;
    }

    /**
     * Reads and checks the tables of a source, under its folder {@code insignia}.
     *
     * @throws TableFaults with every fault found
     */
    public static InsigniaTables load(TableSource source) {
        var faults = new FaultList();
        var loaded = new InsigniaTables(source, faults);
        faults.refuseIfAny();
        return loaded;
    }

    /** Faulty tables hold twice what should stand once; the fault is noted where they are read. */
    private static <T> Map<String, T> index(List<T> values, Function<T, String> key) {
        return values.stream().collect(toMap(key, Function.identity(), (first, second) -> first));
    }

    public List<RibbonColor> colors() {
        return colors;
    }

    public Optional<RibbonColor> color(String name) {
        return Optional.ofNullable(colorByName.get(name));
    }

    public List<RibbonDesign> ribbons() {
        return ribbons;
    }

    /** The ribbon of an award. */
    public Optional<RibbonDesign> ribbon(String award) {
        return Optional.ofNullable(ribbonById.get(award));
    }

    public List<DeviceDesign> devices() {
        return devices;
    }

    /** A device as worn on one of the two ribbons; empty where it is not worn there. */
    public Optional<DeviceDesign> device(String device, WornOn wornOn) {
        return devices.stream()
                .filter(design -> design.device().equals(device) && design.wornOn() == wornOn)
                .findFirst();
    }

    public List<WearOrder> wearOrder() {
        return wearOrder;
    }

    /** Where an award stands; empty for what is not worn among ribbons. */
    public Optional<WearOrder> wearOrder(String award) {
        return Optional.ofNullable(orderByAward.get(award));
    }

    public List<MedalDesign> medals() {
        return medals;
    }

    /** The medal of an award; empty for what is a ribbon or an emblem only. */
    public Optional<MedalDesign> medal(String award) {
        return medals.stream().filter(medal -> medal.award().equals(award)).findFirst();
    }

    public List<BadgeDesign> badges() {
        return badges;
    }

    public Optional<BadgeDesign> badge(String id) {
        return badges.stream().filter(badge -> badge.id().equals(id)).findFirst();
    }

    /**
     * A distance that framers keep.
     *
     * @throws IllegalArgumentException if the table has no such rule
     */
    public DisplayRule displayRule(String id) {
        return displayRules.stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "display_rules.csv has no rule \"%s\". Add a row for it.".formatted(id)));
    }

    /** Common frames, smallest first. */
    public List<FrameSize> frames() {
        return frames;
    }

    /** The depth something needs behind the glass. */
    public Optional<ClearDepth> depth(String contents) {
        return depths.stream()
                .filter(depth -> depth.contents().equals(contents))
                .findFirst();
    }

    /** Conservation advice and cautions, in the order of the table. */
    public List<CareNote> careNotes() {
        return careNotes;
    }

    /** Shoulder sleeve insignia, in the order of the table. */
    public List<SleeveDesign> sleeves() {
        return sleeves;
    }

    /** The insigne of a unit; empty for a unit without one, or one that was not seen. */
    public Optional<SleeveDesign> sleeve(String unit) {
        return sleeves.stream().filter(sleeve -> sleeve.unit().equals(unit)).findFirst();
    }
}
