package org.stillrail.bank;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.mounting.MountingEstimate;
import org.stillrail.electrical.mounting.MountingGeometry;
import org.stillrail.electrical.mounting.ShortedLand;
import org.stillrail.library.Library;
import org.stillrail.library.ShortedFixture;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * Where the mounting in a branch card comes from: typed, estimated from a geometry, read from a sweep of the shorted lands, or fitted
 * on the bench. An origin counts as long as the two figures in the card are those that it gives.
 */
final class MountingForm {

    private static final String TYPED = "typed";
    private static final String GEOMETRY = "geometry";
    private static final String SHORTED = "shorted";
    private static final String FITTED = "fitted";
    private static final int DIGITS = 3;

    private final Form form;
    private final String b;
    private final String who;

    /**
     * @param b   prefix of the branch's fields
     * @param who begins the name of a field in a message
     */
    MountingForm(Form form, String b, String who) {
        this.form = form;
        this.b = b;
        this.who = who;
    }

    /** What an origin gives, in words. */
    record Offer(SeriesPath path, String figures, List<String> notes, boolean taken) {
    }

    static Map<String, String> origins() {
        Map<String, String> origins = new LinkedHashMap<>();
        origins.put(TYPED, "figures typed here");
        origins.put(GEOMETRY, "estimated from pads and vias");
        origins.put(SHORTED, "a sweep of the shorted lands");
        return origins;
    }

    boolean isEstimated() {
        return GEOMETRY.equals(form.get(b + "mountingFrom"));
    }

    boolean isShorted() {
        return SHORTED.equals(form.get(b + "mountingFrom"));
    }

    /** Null where it is typed, where the figures in the card are others, and where a field is wrong. */
    MountingOrigin read(SeriesPath mounting, Library library) {
        form.text(b + "mountingFrom", who + "where the mounting comes from", false);
        if (FITTED.equals(form.get(b + "mountingFrom")) && !form.isBlank(b + "fitted")) {
            boolean kept = text("mountingR").equals(text("fittedR")) && text("mountingL").equals(text("fittedL"));
            return kept ? MountingOrigin.fitted(form.get(b + "fitted")) : null;
        }
        if (isEstimated()) {
            MountingGeometry geometry = geometry();
            return geometry != null && same(mounting, MountingEstimate.of(geometry).path()) ? MountingOrigin.estimated(geometry) : null;
        }
        if (isShorted()) {
            ShortedFixture fixture = fixture(library);
            Double shortH = shortInductanceH();
            ShortedLand land = fixture == null || shortH == null ? null : land(fixture, shortH);
            return land != null && same(mounting, land.path())
                    ? MountingOrigin.shorted(new MountingOrigin.ShortedSweep(fixture.id(), fixture.name(), shortH)) : null;
        }
        return null;
    }

    /** What the chosen origin gives; null where it is typed, or a field is wrong. */
    Offer offer(Library library) {
        if (isEstimated()) {
            MountingGeometry geometry = geometry();
            if (geometry == null) {
                return null;
            }
            MountingEstimate estimate = MountingEstimate.of(geometry);
            return offer(estimate.path(), ": lands " + henry(estimate.landH()) + ", vias " + henry(estimate.viaH()), estimate.notes());
        }
        if (isShorted()) {
            ShortedFixture fixture = fixture(library);
            Double shortH = shortInductanceH();
            ShortedLand land = fixture == null || shortH == null ? null : land(fixture, shortH);
            return land == null ? null : offer(land.path(), ", give or take " + henry(land.spreadH()) + ", from " + land.points() + " points", land.warnings());
        }
        return null;
    }

    private Offer offer(SeriesPath path, String rest, List<String> notes) {
        Form typed = Form.empty().with("R", text("mountingR")).with("L", text("mountingL"));
        Double r = typed.notNegative("R", "R", "ohm", false);
        Double l = typed.notNegative("L", "L", "H", false);
        boolean taken = typed.errors().none() && same(new SeriesPath(r == null ? 0 : r, l == null ? 0 : l), path);
        return new Offer(path, henry(path.inductanceH()) + " and " + Quantity.format(path.resistanceOhm(), "ohm", DIGITS) + rest, notes, taken);
    }

    /** Puts what the chosen origin gives into the figures of the card. */
    void take(Library library) {
        Offer offer = offer(library);
        if (offer != null) {
            form.with(b + "mountingL", entry(offer.path().inductanceH(), "H")).with(b + "mountingR", entry(offer.path().resistanceOhm(), "ohm"));
        }
    }

    /** Fills the fields of an origin that was just chosen: a geometry to start from, the first of the stored sweeps. */
    void choose(Library library) {
        if (isShorted() && form.isBlank(b + "short")) {
            library.shortedFixtures().keySet().stream().findFirst().ifPresent(id -> form.with(b + "short", id.toString()));
        }
        if (isEstimated() && form.isBlank(b + "landWidth")) {
            fill(new MountingGeometry(0.2e-3, 1e-3, 0.8e-3, 1, 0.3e-3, 1e-3, null));
        }
    }

    void fill(MountingOrigin origin) {
        if (origin == null) {
            form.with(b + "mountingFrom", TYPED);
        } else if (origin.geometry() != null) {
            form.with(b + "mountingFrom", GEOMETRY);
            fill(origin.geometry());
        } else if (origin.shorted() != null) {
            form.with(b + "mountingFrom", SHORTED).with(b + "short", origin.shorted().fixtureId().toString())
                    .with(b + "shortL", entry(origin.shorted().shortInductanceH(), "H"));
        } else {
            form.with(b + "mountingFrom", FITTED).with(b + "fitted", origin.fitted()).with(b + "fittedR", text("mountingR"))
                    .with(b + "fittedL", text("mountingL"));
        }
    }

    private void fill(MountingGeometry geometry) {
        form.with(b + "height", Quantity.entry(geometry.heightM(), "m"))
                .with(b + "landLength", Quantity.entry(geometry.landLengthM(), "m"))
                .with(b + "landWidth", Quantity.entry(geometry.landWidthM(), "m"))
                .with(b + "viaPairs", Integer.toString(geometry.viaPairs()))
                .with(b + "viaDiameter", Quantity.entry(geometry.viaDiameterM(), "m"))
                .with(b + "viaSpacing", Quantity.entry(geometry.viaSpacingM(), "m"))
                .with(b + "copper", geometry.copperM() == null ? "" : Quantity.entry(geometry.copperM(), "m"));
    }

    private MountingGeometry geometry() {
        Double height = form.positive(b + "height", who + "height over the plane", "m", true);
        Double length = form.notNegative(b + "landLength", who + "length of the lands", "m", true);
        Double width = form.positive(b + "landWidth", who + "width of the lands", "m", true);
        Integer pairs = form.whole(b + "viaPairs", who + "via pairs", 1, MountingGeometry.MOST_PAIRS, true);
        Double diameter = form.positive(b + "viaDiameter", who + "diameter of a via", "m", true);
        Double spacing = form.positive(b + "viaSpacing", who + "spacing of a via pair", "m", true);
        Double copper = form.positive(b + "copper", who + "thickness of the copper", "m", false);
        if (diameter != null && spacing != null && spacing <= diameter) {
            form.errors().add(b + "viaSpacing", who + "the spacing of a via pair must be above the vias' diameter");
            return null;
        }
        if (copper != null && diameter != null && 2 * copper > diameter) {
            form.errors().add(b + "copper", who + "the thickness of the copper must be at most half of the vias' diameter");
            return null;
        }
        return height == null || length == null || width == null || pairs == null || diameter == null || spacing == null
                || form.errors().has(b + "copper") ? null
                : new MountingGeometry(height, length, width, pairs, diameter, spacing, copper);
    }

    private ShortedFixture fixture(Library library) {
        return form.read(b + "short", who + "sweep of the shorted lands", true, text -> library.shortedFixture(UUID.fromString(text))
                .orElseThrow(() -> new IllegalArgumentException(who + "there is no such fixture sweep with a short")));
    }

    private Double shortInductanceH() {
        Double h = form.notNegative(b + "shortL", who + "inductance of the short itself", "H", false);
        return h == null && !form.errors().has(b + "shortL") ? (Double) 0.0 : h;
    }

    private ShortedLand land(ShortedFixture fixture, double shortH) {
        try {
            return ShortedLand.of(fixture.impedance().grid().toArray(), fixture.impedance().reals(), fixture.impedance().imaginaries(), shortH);
        } catch (IllegalArgumentException e) {
            form.errors().add(b + "short", who + fixture.name() + " tells no mounting: " + e.getMessage());
            return null;
        }
    }

    /** As far as the digits go that a field shows. */
    private static boolean same(SeriesPath a, SeriesPath given) {
        return a.equals(new SeriesPath(rounded(given.resistanceOhm()), rounded(given.inductanceH())));
    }

    private static double rounded(double value) {
        return value == 0 ? 0 : new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
    }

    private static String entry(double value, String unit) {
        return value == 0 ? "" : Quantity.entry(rounded(value), unit);
    }

    private static String henry(double h) {
        return Quantity.format(h, "H", DIGITS);
    }

    private String text(String field) {
        return form.isBlank(b + field) ? "" : form.get(b + field).strip();
    }
}
