package org.stillrail.electrical.converter;

/** Frequencies round a crossover, and round the wanted one where it is another. */
public record CrossoverBand(double lowHz, double highHz) {

    /**
     * @param wantedHz null where none was wanted
     * @param spread   how far beyond the crossovers it reaches, as a factor
     */
    public static CrossoverBand of(double crossoverHz, Double wantedHz, double spread) {
        double other = wantedHz == null ? crossoverHz : wantedHz;
        return new CrossoverBand(Math.min(crossoverHz, other) / spread, Math.max(crossoverHz, other) * spread);
    }

    public boolean holds(double hz) {
        return hz >= lowHz && hz <= highHz;
    }
}
