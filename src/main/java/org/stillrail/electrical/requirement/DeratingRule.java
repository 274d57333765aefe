package org.stillrail.electrical.requirement;

import java.util.Objects;
import java.util.OptionalDouble;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.capacitor.Technology;

/**
 * The largest voltage, DC plus the peak of the ripple, that a team lets a technology carry, as a share of its rated voltage.
 * The share holds up to a first temperature and from there falls in a straight line to a second share at a second temperature.
 * Above the last temperature the rule allows nothing.
 *
 * @param share             above 0, at most 1
 * @param upToC             the first temperature; null where the share holds at every temperature
 * @param secondShare       null where the rule ends at the first temperature
 * @param secondC           above the first temperature; with {@code secondShare}
 * @param belowVoltageV     on rails below this voltage the part needs at least {@code leastRatedVoltageV}; null for no such rule
 * @param leastRatedVoltageV with {@code belowVoltageV}
 * @param source            the document that the figures come from, or that there is none
 */
public record DeratingRule(
        Technology technology, double share, Double upToC, Double secondShare, Double secondC, Double belowVoltageV, Double leastRatedVoltageV,
        String source) {

    public DeratingRule {
        Objects.requireNonNull(technology, "technology");
        Objects.requireNonNull(source, "source");
        requireShare("share", share);
        if (upToC != null) {
            Require.finite("upToC", upToC);
        }
        if ((secondShare == null) != (secondC == null)) {
            throw new IllegalArgumentException("secondShare and secondC belong together: give both or neither");
        }
        if (secondShare != null) {
            requireShare("secondShare", secondShare);
            Require.finite("secondC", secondC);
            if (upToC == null || !(secondC > upToC)) {
                throw new IllegalArgumentException("secondC must be above upToC, not " + secondC + " with upToC " + upToC);
            }
        }
        if ((belowVoltageV == null) != (leastRatedVoltageV == null)) {
            throw new IllegalArgumentException("belowVoltageV and leastRatedVoltageV belong together: give both or neither");
        }
        if (belowVoltageV != null) {
            Require.positive("belowVoltageV", belowVoltageV);
            Require.positive("leastRatedVoltageV", leastRatedVoltageV);
        }
    }

    /** One share at every temperature. */
    public static DeratingRule constant(Technology technology, double share, String source) {
        return new DeratingRule(technology, share, null, null, null, null, null, source);
    }

    /** The share of the rated voltage that is allowed at a temperature; empty above the last one that the rule speaks of. */
    public OptionalDouble shareAt(double temperatureC) {
        if (upToC == null || temperatureC <= upToC) {
            return OptionalDouble.of(share);
        }
        if (secondC == null || temperatureC > secondC) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(share + (secondShare - share) * (temperatureC - upToC) / (secondC - upToC));
    }

    private static void requireShare(String name, double value) {
        if (!(value > 0) || value > 1) {
            throw new IllegalArgumentException(name + " must be above 0 and at most 1, not " + value);
        }
    }
}
