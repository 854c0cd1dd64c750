package org.honorsdue.determination.law;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.Device;

/** The count of awards and of what is worn for them, taken once an award is due. */
public final class Tally {
    private int count = 1;
    private boolean shortOnPaper;
    private String name = "";
    private final List<WornDevice> devices = new ArrayList<>(2);
    private final List<Step> steps = new ArrayList<>(4);
    private final List<Supplier<String>> cautions = new ArrayList<>(2);
    private final List<Supplier<FactWanted>> further = new ArrayList<>(1);

    /** A clause on devices or numbers with its answer. */
    record Step(LawClause law, Answer answer) {}

    public void count(int awards) {
        count = awards;
    }

    /** Says which of the badge's kinds it is. */
    public void named(String fuller) {
        name = fuller;
    }

    public void worn(Device device, int number, List<String> standsFor) {
        if (number > 0) {
            devices.add(new WornDevice(device, number, standsFor));
        }
    }

    /** Adds a step of proof on a number or a device. */
    public void because(LawClause law, Answer answer) {
        steps.add(new Step(law, answer));
    }

    public void caution(Supplier<String> words) {
        cautions.add(words);
    }

    /** A further award or device that one fact would add. */
    public void further(FactKind kind, Supplier<String> about) {
        further.add(() -> new FactWanted(kind.id(), about.get()));
    }

    /** The paper shows the award but not all that belongs to it. */
    public void shortOnPaper() {
        shortOnPaper = true;
    }

    int count() {
        return count;
    }

    String name() {
        return name;
    }

    boolean isShortOnPaper() {
        return shortOnPaper;
    }

    List<WornDevice> devices() {
        return devices;
    }

    List<Step> steps() {
        return steps;
    }

    List<Supplier<String>> cautions() {
        return cautions;
    }

    List<Supplier<FactWanted>> furtherWanted() {
        return further;
    }
}
