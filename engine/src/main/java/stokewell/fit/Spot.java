package stokewell.fit;

/** Where a sensor can be in a rig. */
public enum Spot {
    ROOM("room", 0.15),
    STORE_TOP("store top", 0.3),
    STORE_MIDDLE("store middle", 0.3),
    STORE_BOTTOM("store bottom", 0.3),
    OUTDOOR("outdoor", 0.3),
    FLOW("flow", 1.5),
    RETURN("return", 1.5),
    STOVE("stove", 10),
    FLUE("flue", 30),
    SLAB("slab", 0.3),
    /** Read but not used. */
    NOTHING("nothing", 1);

    /** What a person calls it. */
    public final String words;
    /** Error to start from, model and sensor together, K: a guess that the first round of a fit replaces. */
    public final double error;

    Spot(String words, double error) {
        this.words = words;
        this.error = error;
    }

    /** Whether a sensor is strapped to a pipe there. */
    boolean isPipe() {
        return this == FLOW || this == RETURN;
    }

    /**
     * Standard deviation of what such a sensor reads too much before it is held against anything, K: half a degree of a cheap
     * logger, more where it is strapped on from outside. Common practice, no source.
     */
    double offsetSpread() {
        return isPipe() ? 2 : 0.5;
    }

    /** Whether a fit compares the model with it: the flue's gas and the stove's skin only tell when a fire was lit. */
    public boolean compared() {
        return this != OUTDOOR && this != FLUE && this != STOVE && this != NOTHING;
    }

    /** By what a person writes, whatever the case and the blanks; null where it is none. */
    public static Spot named(String text) {
        String plain = text.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[\\s_.-]+", " ");
        for (Spot s : values()) if (s.words.equals(plain)) return s;
        return null;
    }
}
