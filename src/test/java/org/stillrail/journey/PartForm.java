package org.stillrail.journey;

/** The form with the datasheet figures of a part. */
final class PartForm {

    private PartForm() {
    }

    /** Proposes an invented polymer of 100 uF and 10 V and stays on its page. */
    static void propose(String partNumber, Visitor visitor) {
        visitor.open("/library/parts/new");
        fill(partNumber, visitor);
        visitor.press("Propose the part");
        visitor.seesHeading(partNumber);
    }

    static void fill(String partNumber, Visitor visitor) {
        visitor.fill("Part number", partNumber);
        visitor.fill("Maker", "Notional Electrolytics");
        visitor.choose("Technology", "polymer aluminium");
        visitor.fill("Capacitance (F)", "100u");
        visitor.fill("Rated voltage (V)", "10");
    }
}
