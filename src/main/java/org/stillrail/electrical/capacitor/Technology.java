package org.stillrail.electrical.capacitor;

/** How a capacitor is made; the key is the word in documents, the API and style sheets, the label the word on pages. */
public enum Technology {

    WET_ALUMINIUM("wet-aluminium", "wet aluminium", true),
    POLYMER_ALUMINIUM("polymer-aluminium", "polymer aluminium", true),
    HYBRID("hybrid", "hybrid aluminium", true),
    TANTALUM_MNO2("tantalum-mno2", "tantalum MnO\u2082", true),
    TANTALUM_POLYMER("tantalum-polymer", "tantalum polymer", true),
    CERAMIC_CLASS_1("ceramic-1", "ceramic class 1", false),
    CERAMIC_CLASS_2("ceramic-2", "ceramic class 2", false),
    FILM("film", "film", false),
    DOUBLE_LAYER("double-layer", "double-layer", true);

    private final String key;
    private final String label;
    private final boolean polar;

    Technology(String key, String label, boolean polar) {
        this.key = key;
        this.label = label;
        this.polar = polar;
    }

    public String key() {
        return key;
    }

    public String label() {
        return label;
    }

    /** Whether reverse voltage harms it. */
    public boolean polar() {
        return polar;
    }

    /** @throws IllegalArgumentException naming the words that are known */
    public static Technology ofKey(String key) {
        for (Technology technology : values()) {
            if (technology.key.equals(key)) {
                return technology;
            }
        }
        throw new IllegalArgumentException("'" + key + "' is not a technology that Stillrail knows");
    }
}
