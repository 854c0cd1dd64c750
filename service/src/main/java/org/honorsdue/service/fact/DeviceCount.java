package org.honorsdue.service.fact;

/** So many of one device. */
public record DeviceCount(Device device, int count) {
    public DeviceCount {
        if (count < 1) {
            throw new IllegalArgumentException("A device is there at least once, not %d times.".formatted(count));
        }
    }
}
