package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.bank.CarrierRibbon.Ring;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The anti-resonance of a band with the largest Q over all corners, where that is notably larger than any Q of the band at the shown
 * corner: by a quarter or more, which is chosen here.
 *
 * @param band       in words
 * @param corner     where it is
 * @param inductive  what is the inductor there, for a sentence; with {@code capacitive}
 * @param shownQ     largest Q of the band at the shown corner, 0 where it has no maximum
 */
public record SharperRing(
        String band, String corner, double frequencyHz, double magnitudeOhm, double qualityFactor, String inductive, String capacitive, double shownQ) {

    private static final double NOTABLY = 1.25;
    private static final int POINTS_PER_DECADE = 48;

    /** None, one or two: of the damping band, of the quiet band. */
    static List<SharperRing> of(List<CornerFigures> corners, CornerFigures shown, KeyFrequencies frequencies) {
        SharperRing damping = sharper("damping band", corners, shown, each -> each.loop() == null || !each.loop().answered() ? Stream.empty()
                : Stream.ofNullable(each.loop().value().worstRing()));
        SharperRing quiet = sharper("quiet band", corners, shown, each -> turns(each.bank(), frequencies.quietFromHz(), frequencies.quietToHz()));
        return Stream.of(damping, quiet).filter(Objects::nonNull).toList();
    }

    /**
     * Extrema round the places where |Z| begins to fall, and where a bank turns from inductive to capacitive: a sharp anti-resonance does that,
     * even between two points that both see |Z| rise. Looking closely only there takes a fraction of the time.
     */
    private static Stream<Extremum> turns(Bank bank, double fromHz, double toHz) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(fromHz, toHz, (int) Math.ceil(POINTS_PER_DECADE * Math.log10(toHz / fromHz)) + 1);
        List<Extremum> extrema = new ArrayList<>();
        boolean inductive = false;
        boolean rising = false;
        for (int i = 0; i < grid.size(); i++) {
            ImpedancePoint point = bank.at(grid.hz(i));
            if (inductive && point.reactanceOhm() < 0 || rising && point.magnitudeSlope() < 0) {
                extrema.addAll(bank.extrema(grid.hz(Math.max(0, i - 2)), grid.hz(Math.min(grid.size() - 1, i + 1))));
            }
            inductive = point.reactanceOhm() > 0;
            rising = point.magnitudeSlope() > 0;
        }
        return extrema.stream();
    }

    private static SharperRing sharper(String band, List<CornerFigures> corners, CornerFigures shown, Function<CornerFigures, Stream<Extremum>> extrema) {
        double shownQ = extrema.apply(shown).filter(SharperRing::maximum).mapToDouble(Extremum::qualityFactor).max().orElse(0);
        double least = Math.max(CarrierRibbon.RINGING, NOTABLY * shownQ);
        SharperRing sharpest = null;
        for (CornerFigures each : corners) {
            for (Extremum extremum : extrema.apply(each).filter(SharperRing::maximum).toList()) {
                Ring ring = extremum.qualityFactor() > least ? Ring.of(each.bank(), extremum) : null;
                if (ring != null) {
                    least = ring.qualityFactor();
                    sharpest = new SharperRing(band, each.corner().name(), ring.frequencyHz(), ring.magnitudeOhm(), ring.qualityFactor(),
                            ring.inductive().name(each.bank()), ring.capacitive().name(each.bank()), shownQ);
                }
            }
        }
        return sharpest;
    }

    /** The corner as the end of a sentence. */
    public String atCorner() {
        return Corner.at(corner);
    }

    /** Whether anything rings in the band at the shown corner. */
    public boolean ringsAsShown() {
        return shownQ > CarrierRibbon.RINGING;
    }

    private static boolean maximum(Extremum extremum) {
        return extremum.kind() == Extremum.Kind.MAXIMUM;
    }
}
