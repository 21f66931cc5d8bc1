package stokewell.show;

import stokewell.file.UnitSystem;
import stokewell.matter.Wood;

/** How stacked wood is counted. */
public enum Stack {
    /** 128 cubic feet, stacked. */
    CORD("cord", Wood.CORD),
    /** One cubic metre, stacked. */
    STERE("stere", Wood.STERE);

    /** The word for one. */
    public final String word;

    /** How much one is, m3 stacked. */
    public final double volume;

    Stack(String word, double volume) {
        this.word = word;
        this.volume = volume;
    }

    /** What people of these units count in. */
    public static Stack of(UnitSystem units) {
        return units == UnitSystem.US ? CORD : STERE;
    }

    /** So many of them in a mass of wood: kg over kg per stacked m3. */
    public double count(double mass, double stackedDensity) {
        return mass / stackedDensity / volume;
    }

    /** Told with its word: {@code 0.064 stere}, {@code 2.31 cords}. */
    String told(double mass, double stackedDensity) {
        double count = count(mass, stackedDensity);
        if (!Double.isFinite(count)) return "- " + word;
        return Numbers.counting(count) + " " + word + (count > 1 ? "s" : "");
    }
}
