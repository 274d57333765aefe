package org.stillrail.electrical.requirement;

import org.stillrail.electrical.capacitor.Technology;

/**
 * Voltage derating of capacitors as two public documents state it, by military style: a share of the rated DC voltage that
 * holds to a first temperature and falls in a straight line to a second pair.
 *
 * <p>Sources, both read second-hand in a transcription: MIL-STD-975M (NASA), 5 August 1994, appendix A 3.1, cancelled in 1998;
 * RL-TR-92-11 (Rome Laboratory), 1992, table 9-2.
 */
public enum PublishedDerating {

    MIL_STD_975M_CERAMIC("CCR, CKS, CKR, CDR", 0.6, 110.0, null, null, null),
    MIL_STD_975M_GLASS("CYR", 0.5, 110.0, null, null, null),
    MIL_STD_975M_FILM("CRH, CHS", 0.6, 85.0, null, null, null),
    MIL_STD_975M_TANTALUM_FOIL("CLR25, CLR27, CLR35, CLR37", 0.5, 70.0, null, null, null),
    MIL_STD_975M_WET_TANTALUM("CLR79, CLR81", 0.6, 70.0, 0.4, 110.0, null),
    MIL_STD_975M_SOLID_TANTALUM("CSR, CSS, CWR", 0.5, 70.0, 0.3, 110.0, null),
    RL_TR_92_11_CERAMIC("CDR", 0.6, null, null, null, 0.85),
    RL_TR_92_11_SOLID_TANTALUM("CWR", 0.6, 85.0, null, null, null);

    /** MIL-STD-975M: ceramics in circuits below this voltage need a part rated for at least {@link #LEAST_RATED_VOLTAGE_V}. */
    public static final double LOW_VOLTAGE_V = 10;
    public static final double LEAST_RATED_VOLTAGE_V = 100;

    private final String styles;
    private final double share;
    private final Double upToC;
    private final Double secondShare;
    private final Double secondC;
    private final Double ratedTemperatureShare;

    PublishedDerating(String styles, double share, Double upToC, Double secondShare, Double secondC, Double ratedTemperatureShare) {
        this.styles = styles;
        this.share = share;
        this.upToC = upToC;
        this.secondShare = secondShare;
        this.secondC = secondC;
        this.ratedTemperatureShare = ratedTemperatureShare;
    }

    /** The document's rule, taken over for a technology. */
    public DeratingRule rule(Technology technology) {
        return new DeratingRule(technology, share, upToC, secondShare, secondC, null, null, source());
    }

    /** The rule with the document's demand for parts on low voltages. */
    public DeratingRule ruleWithLowVoltage(Technology technology) {
        return new DeratingRule(technology, share, upToC, secondShare, secondC, LOW_VOLTAGE_V, LEAST_RATED_VOLTAGE_V, source());
    }

    public String source() {
        return name().startsWith("MIL")
                ? "MIL-STD-975M, appendix A 3.1, styles " + styles + " (read in a transcription)"
                : "RL-TR-92-11, table 9-2, styles " + styles + " (read in a transcription)";
    }

    /** Largest temperature as a share of the part's rated temperature; null where the document gives degrees instead. */
    public Double ratedTemperatureShare() {
        return ratedTemperatureShare;
    }
}
