package stokewell.building;

import java.util.Locale;
import java.util.Optional;

/**
 * What lets the light in. Common practice values for whole areas of glazing without thick frames; sun gain g at right angles
 * (EN 410 sense, from memory), about 10 % less over a day. Films and twin-wall sheet age.
 */
public enum Window {
    SINGLE(5.7, 0.86, "single", "single glass", "single pane"),
    SINGLE_WITH_STORM(2.9, 0.76, "storm", "single with storm", "secondary glazing", "single and storm"),
    DOUBLE(2.8, 0.76, "double", "double glass", "double glazed", "double pane"),
    DOUBLE_LOW_E(1.3, 0.60, "low e", "double low e", "low e argon", "low e double"),
    TRIPLE(0.8, 0.50, "triple", "triple glass", "triple glazed", "triple pane"),
    ACRYLIC(5.3, 0.85, "acrylic", "plexiglass", "single acrylic", "polycarbonate sheet"),
    TWIN_WALL_6(3.6, 0.80, "twin wall 6", "twin wall 6 mm", "6 mm twin wall"),
    TWIN_WALL_8(3.3, 0.78, "twin wall", "twin wall 8", "twin wall 8 mm", "8 mm twin wall"),
    TWIN_WALL_10(3.1, 0.77, "twin wall 10", "twin wall 10 mm", "10 mm twin wall"),
    TRIPLE_WALL_16(2.4, 0.70, "triple wall", "triple wall 16", "triple wall 16 mm", "16 mm triple wall"),
    FILM(6.8, 0.86, "film", "single film", "poly film", "greenhouse film"),
    DOUBLE_FILM(4.0, 0.76, "double film", "inflated film", "two films");

    private final double u;
    private final double g;
    private final String[] names;

    Window(double u, double g, String... names) {
        this.u = u;
        this.g = g;
        this.names = names;
    }

    /** W/(m² K), both films included. */
    public double u() {
        return u;
    }

    /** Share of the sun on it that ends as heat inside. */
    public double g() {
        return g;
    }

    /** The kind that the words name, "double glazed" or "8 mm twin-wall". */
    public static Optional<Window> named(String words) {
        String plain = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", " ")
                .replaceAll("(\\d)mm\\b", "$1 mm")
                .replaceAll(" ?\\b(glazing|window|windows)$", "")
                .replaceAll("\\btwinwall\\b", "twin wall")
                .strip();
        for (Window w : values()) {
            if (plain.equals(w.name().toLowerCase(Locale.ROOT).replace('_', ' '))) {
                return Optional.of(w);
            }
            for (String name : w.names) {
                if (name.equals(plain)) {
                    return Optional.of(w);
                }
            }
        }
        return Optional.empty();
    }
}
