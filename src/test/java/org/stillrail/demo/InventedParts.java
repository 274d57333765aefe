package org.stillrail.demo;

/**
 * What a typical sample of each measured part does at room temperature without bias: invented, sized so that a sample keeps
 * well inside the datasheet figures of {@code parts.json}.
 */
final class InventedParts {

    private static final double LINE_HZ = 120;
    private static final double AUDIO_HZ = 1e3;

    private InventedParts() {
    }

    static CapacitorPhysics heron470() {
        return new CapacitorPhysics(455e-6, LINE_HZ, 0.075, 0.060, 0.030, 0.006, 3e5, 13e-9);
    }

    static CapacitorPhysics heron330() {
        return new CapacitorPhysics(317e-6, LINE_HZ, 0.070, 0.110, 0.070, 0.008, 3e5, 9.2e-9);
    }

    static CapacitorPhysics wren560() {
        return new CapacitorPhysics(545e-6, LINE_HZ, 0.012, 0.0040, 0.0028, 0.0016, 4e5, 3.6e-9);
    }

    static CapacitorPhysics wren270() {
        return new CapacitorPhysics(262e-6, LINE_HZ, 0.012, 0.0050, 0.0045, 0.0017, 4e5, 3.8e-9);
    }

    static CapacitorPhysics wren100() {
        return new CapacitorPhysics(97e-6, LINE_HZ, 0.014, 0.012, 0.010, 0.002, 4e5, 3.3e-9);
    }

    static CapacitorPhysics rook270() {
        return new CapacitorPhysics(262e-6, LINE_HZ, 0.050, 0.010, 0.0085, 0.003, 3e5, 7.1e-9);
    }

    static CapacitorPhysics finch100() {
        return new CapacitorPhysics(98e-6, LINE_HZ, 0.020, 0.090, 0.035, 0.004, 8e5, 1.9e-9);
    }

    static CapacitorPhysics swift330() {
        return new CapacitorPhysics(321e-6, LINE_HZ, 0.015, 0.022, 0.0070, 0.003, 8e5, 1.6e-9);
    }

    static CapacitorPhysics plover10n() {
        return new CapacitorPhysics(9.97e-9, AUDIO_HZ, 0.0003, 0, 0, 0.020, 2e7, 0.50e-9);
    }

    static CapacitorPhysics plover1n() {
        return new CapacitorPhysics(1.003e-9, 1e6, 0.0002, 0, 0, 0.030, 2e7, 0.44e-9);
    }

    static CapacitorPhysics sparrow100n() {
        return new CapacitorPhysics(98.4e-9, AUDIO_HZ, 0.013, 0, 0, 0.009, 3e6, 0.42e-9);
    }

    static CapacitorPhysics sparrow1u() {
        return new CapacitorPhysics(0.968e-6, AUDIO_HZ, 0.020, 0, 0, 0.005, 2e6, 0.45e-9);
    }

    static CapacitorPhysics sparrow4u7() {
        return new CapacitorPhysics(4.53e-6, AUDIO_HZ, 0.022, 0, 0, 0.0028, 1.5e6, 0.50e-9);
    }

    static CapacitorPhysics sparrow10u25() {
        return new CapacitorPhysics(9.62e-6, AUDIO_HZ, 0.022, 0, 0, 0.0022, 1e6, 0.62e-9);
    }

    static CapacitorPhysics sparrow10u50() {
        return new CapacitorPhysics(9.71e-6, AUDIO_HZ, 0.018, 0, 0, 0.0020, 1e6, 0.75e-9);
    }

    static CapacitorPhysics sparrow22u() {
        return new CapacitorPhysics(20.9e-6, LINE_HZ, 0.035, 0, 0, 0.0019, 8e5, 0.50e-9);
    }

    static CapacitorPhysics sparrow47u() {
        return new CapacitorPhysics(44.1e-6, LINE_HZ, 0.040, 0, 0, 0.0016, 6e5, 0.60e-9);
    }

    static CapacitorPhysics stork1u() {
        return new CapacitorPhysics(0.991e-6, AUDIO_HZ, 0.0045, 0, 0, 0.006, 1e6, 6.4e-9);
    }

    static CapacitorPhysics stork4u7() {
        return new CapacitorPhysics(4.72e-6, AUDIO_HZ, 0.0002, 0, 0, 0.0035, 3e5, 17e-9);
    }

    static CapacitorPhysics goose1f() {
        return new CapacitorPhysics(0.96, 0.01, 0.030, 0.160, 0.090, 0.030, 1e6, 32e-9);
    }
}
