package org.honorsdue.insignia;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Device;

/** Findings for case notes, of invented soldiers. */
public final class Found {
    private Found() {}

    public static Findings findings(Finding... found) {
        return new Findings(LocalDate.of(2026, 11, 25), Arrays.asList(found), List.of(), List.of(), List.of());
    }

    public static Finding authorized(String award, WornDevice... devices) {
        return standing(Standing.AUTHORIZED, award, devices);
    }

    public static Finding standing(Standing standing, String award, WornDevice... devices) {
        String name = Reference.published().award(award).orElseThrow().name();
        return new Finding(
                award,
                name,
                standing,
                OnPaper.YES,
                standing == Standing.AUTHORIZED ? 1 : 0,
                Arrays.asList(devices),
                List.of(),
                List.of(),
                List.of(),
                "");
    }

    public static WornDevice worn(int count, Device device) {
        return new WornDevice(device, count, List.of());
    }
}
