package org.honorsdue.determination.finding;

import java.util.List;
import org.honorsdue.service.fact.Device;

/** A device to be worn, so many of it, and what each stands for. */
public record WornDevice(Device device, int count, List<String> standsFor) {
    public WornDevice {
        standsFor = List.copyOf(standsFor);
    }
}
