package org.stillrail.library;

import java.math.BigDecimal;
import java.util.List;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.stress.LifeRating;

/**
 * What one revision of a part says: the datasheet's figures, where they stand, and which model the part lends to banks.
 * SI units; null where the datasheet says nothing.
 *
 * @param tolerancePercent    capacitance tolerance as minus and plus per cent, both 0 or positive
 * @param losses              the datasheet's ESR and loss-tangent figures, in the order entered
 * @param inductanceH         equivalent series inductance; or derived from {@code selfResonanceHz} where only that is given
 * @param dielectricCode      class code of a ceramic, such as X7R
 * @param heightM             height over the board
 * @param characteristics     how it changes with bias, temperature and age
 * @param cost                of one part, in the team's currency
 * @param stress              what else the datasheet says of heat and polarity
 */
public record PartDocument(
        String partNumber,
        String maker,
        Technology technology,
        double capacitanceF,
        Tolerance tolerancePercent,
        double ratedVoltageV,
        List<LossFigure> losses,
        Double inductanceH,
        Double selfResonanceHz,
        RippleRating rippleRating,
        Double temperatureMinC,
        Double temperatureMaxC,
        Endurance endurance,
        String dielectricCode,
        String caseSize,
        Double lengthM,
        Double widthM,
        Double heightM,
        BigDecimal cost,
        DatasheetReference datasheet,
        ModelChoice model,
        PartCharacteristics characteristics,
        String note,
        Stress stress) {

    public PartDocument {
        losses = losses == null ? List.of() : List.copyOf(losses);
        characteristics = characteristics == null ? PartCharacteristics.UNKNOWN : characteristics;
    }

    public PartDocument withModel(ModelChoice choice) {
        return new PartDocument(partNumber, maker, technology, capacitanceF, tolerancePercent, ratedVoltageV, losses, inductanceH,
                selfResonanceHz, rippleRating, temperatureMinC, temperatureMaxC, endurance, dielectricCode, caseSize, lengthM, widthM,
                heightM, cost, datasheet, choice, characteristics, note, stress);
    }

    public PartDocument withPartNumber(String number) {
        return new PartDocument(number, maker, technology, capacitanceF, tolerancePercent, ratedVoltageV, losses, inductanceH,
                selfResonanceHz, rippleRating, temperatureMinC, temperatureMaxC, endurance, dielectricCode, caseSize, lengthM, widthM,
                heightM, cost, datasheet, model, characteristics, note, stress);
    }

    /** For example 20 and 20, or 20 and 80. */
    public record Tolerance(double minusPercent, double plusPercent) {
    }

    /** Largest rms ripple current in A with the frequency and temperature it is stated at. */
    public record RippleRating(double currentA, Double frequencyHz, Double temperatureC) {
    }

    /**
     * Each null where the datasheet is silent.
     *
     * @param thermalResistanceKPerW from the hottest place to the air round the part
     * @param reverseVoltageV        allowed backwards, a positive number
     * @param enduranceRiseK         how much the ripple current warms the core in the life test
     * @param lifeOverVoltage        what a voltage below the rated one adds to life; null for nothing
     */
    public record Stress(Double thermalResistanceKPerW, Double reverseVoltageV, Double enduranceRiseK, LifeRating.VoltageTerm lifeOverVoltage) {
    }

    /** Life test: hours at a temperature. */
    public record Endurance(double hours, double temperatureC) {
    }

    /** Where the figures were read. */
    public record DatasheetReference(String document, String revision, String page) {

        @Override
        public String toString() {
            return document + (revision == null ? "" : ", revision " + revision) + (page == null ? "" : ", page " + page);
        }
    }
}
