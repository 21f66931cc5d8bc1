package stokewell.file;

import java.util.Locale;

/** The sixteen winds. */
final class Compass {

    private static final String[] WINDS = {
        "n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"
    };

    private Compass() {}

    /** Radians from north over east of {@code south}, {@code south-east}, {@code NNW}; {@code NaN} for other text. */
    static double bearing(String text) {
        if (!Character.isLetter(text.charAt(0))) return Double.NaN;
        String letters = text.toLowerCase(Locale.ROOT)
                .replace("north", "n")
                .replace("south", "s")
                .replace("east", "e")
                .replace("west", "w")
                .replace("-", "")
                .replace(" ", "");
        for (int i = 0; i < WINDS.length; i++) if (WINDS[i].equals(letters)) return i * Math.PI / 8;
        return Double.NaN;
    }
}
