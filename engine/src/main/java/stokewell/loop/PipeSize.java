package stokewell.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pipe as it is sold.
 *
 * <p>Sources: steel ASME B36.10M schedules 40 and 80; copper K, L, M ASTM B88 (outside diameter less two walls); metric copper
 * EN 1057, PEX ASTM F876 SDR 9 and EN ISO 15875 series S 5 or nearest (these three from memory).
 *
 * @param name as the trade says it
 * @param material what it is made of
 * @param outer outside diameter, m
 * @param inner inside diameter, m
 */
public record PipeSize(String name, Material material, double outer, double inner) {

    /**
     * Roughness: Moody (1944) as commonly reprinted. Solid properties: ISO 10456 table 3; PEX from memory.
     */
    public enum Material {
        COPPER(1.5e-6, 380, 8900, 380),
        STEEL(45e-6, 50, 7800, 450),
        GALVANIZED(150e-6, 50, 7800, 450),
        STAINLESS(2e-6, 17, 7900, 460),
        PEX(1.5e-6, 0.38, 940, 2300);

        /** Equivalent sand roughness, m. */
        public final double roughness;
        /** W/(m K). */
        public final double conductivity;
        /** kg/m³. */
        public final double density;
        /** J/(kg K). */
        public final double specificHeat;

        Material(double roughness, double conductivity, double density, double specificHeat) {
            this.roughness = roughness;
            this.conductivity = conductivity;
            this.density = density;
            this.specificHeat = specificHeat;
        }
    }

    private static final String[] INCHES = {"1/2", "3/4", "1", "1 1/4", "1 1/2", "2"};

    // spotless:off
    private static final double[] STEEL_OUTER  = {21.3, 26.7, 33.4, 42.2, 48.3, 60.3};
    private static final double[] STEEL_INNER  = {15.76, 20.96, 26.64, 35.08, 40.94, 52.48};
    private static final double[] STEEL_HEAVY  = {13.84, 18.88, 24.30, 32.50, 38.14, 49.22};
    private static final double[] COPPER_OUTER = {15.875, 22.225, 28.575, 34.925, 41.275, 53.975};
    private static final double[] COPPER_K     = {13.386, 18.923, 25.273, 31.623, 37.617, 49.759};
    private static final double[] COPPER_L     = {13.843, 19.939, 26.035, 32.131, 38.227, 50.419};
    private static final double[] COPPER_M     = {14.453, 20.599, 26.797, 32.791, 38.786, 51.029};
    private static final double[] PEX_OUTER    = {15.875, 22.225, 28.575};
    private static final double[] PEX_INNER    = {12.319, 17.297, 22.225};
    /** Outside and wall; of two walls the one that is meant when none is named stands first. */
    private static final double[][] COPPER_METRIC =
            {{12, 1.0}, {15, 1.0}, {15, 0.7}, {18, 1.0}, {22, 1.0}, {22, 0.9}, {28, 1.0}, {28, 0.9}, {28, 1.5},
             {35, 1.2}, {35, 1.5}, {42, 1.2}, {42, 1.5}, {54, 1.2}, {54, 2.0}};
    private static final double[][] PEX_METRIC = {{16, 2.0}, {20, 2.0}, {25, 2.3}, {32, 2.9}, {40, 3.7}};
    // spotless:on

    private static final List<PipeSize> ALL = table();

    private static final Pattern WALL = Pattern.compile("(\\d+(?:\\.\\d+)?) ?x ?(\\d+(?:\\.\\d+)?)");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ -]+)?(\\d+)/(\\d+)");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final Pattern TYPE = Pattern.compile("\\b([klm])\\b");
    private static final Pattern SCHEDULE = Pattern.compile("\\bsch(?:edule|ed)?\\.? ?(40|80)\\b");
    private static final String HEAVY = " sch 80";

    public PipeSize {
        if (!(inner > 0 && outer > inner)) {
            throw new IllegalArgumentException(name + ": a bore of " + inner + " m does not fit in " + outer + " m");
        }
    }

    /** Every size known, in the order in which vague words are settled. */
    public static List<PipeSize> all() {
        return ALL;
    }

    /**
     * The pipe that the words name: "3/4 in copper L", "22 mm copper", "22 x 0.9 copper", "1 in steel", "1-1/4 black
     * iron", "1 in sch 40". A schedule with no material is steel, a type with none copper. Copper in inches with no letter
     * is type L, steel with no schedule schedule 40; metric copper with no wall is the first of {@link #all()} that fits:
     * the thicker of the two light walls up to 28 mm. Without a unit, a size up to 2 is inches.
     */
    public static Optional<PipeSize> named(String words) {
        String said = plain(words);
        Material material = materialIn(said);
        if (material == null) {
            return Optional.empty();
        }
        Matcher schedule = SCHEDULE.matcher(said);
        boolean heavy = schedule.find() && schedule.group(1).equals("80");
        String w = schedule.replaceAll("").strip();
        Matcher wall = WALL.matcher(w);
        boolean withWall = wall.find();
        double size = withWall ? Double.parseDouble(wall.group(1)) : sizeIn(w);
        boolean metric = withWall || w.contains("mm") || size > 2 && !w.matches(".*\\b(in|inch|inches)\\b.*");
        String sought;
        if (withWall) {
            sought = metricName(size, Double.parseDouble(wall.group(2)), material);
        } else if (metric) {
            sought = number(size) + " x ";
        } else {
            sought = inchName(size, material, w) + (heavy ? HEAVY : "");
        }
        return ALL.stream()
                .filter(p -> p.material == material)
                .filter(p -> withWall || !metric ? p.name.equals(sought) : p.name.startsWith(sought))
                .findFirst();
    }

    /** Whether it is the thicker of the two walls in which its steel is sold. */
    public boolean heavy() {
        return name.endsWith(HEAVY);
    }

    /** Cross-section of the water, m². */
    public double bore() {
        return Math.PI / 4 * inner * inner;
    }

    /** Resistance of the wall, m K/W for a metre of pipe. */
    public double wallResistance() {
        return Math.log(outer / inner) / (2 * Math.PI * material.conductivity);
    }

    /** Mass of the empty pipe, kg/m. */
    public double massPerMetre() {
        return material.density * Math.PI / 4 * (outer * outer - inner * inner);
    }

    /** Heat that a metre of empty pipe holds, J/(m K). */
    public double capacityPerMetre() {
        return massPerMetre() * material.specificHeat;
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replace("½", " 1/2")
                .replace("¾", " 3/4")
                .replace("¼", " 1/4")
                .replace("″", " in ")
                .replace("\"", " in ")
                .replace('×', 'x')
                .replaceAll("(\\d),(\\d)", "$1.$2")
                .replaceAll("(\\d)(mm|in|inch|inches)\\b", "$1 $2")
                .replaceAll("(\\d) ?(mm) ?x", "$1 x")
                .replaceAll("(\\d)-(\\d)", "$1 $2")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static Material materialIn(String w) {
        if (w.contains("copper")) {
            return Material.COPPER;
        }
        if (w.contains("galvani")) {
            return Material.GALVANIZED;
        }
        if (w.contains("stainless")) {
            return Material.STAINLESS;
        }
        if (w.contains("pex") || w.contains("cross linked") || w.contains("cross-linked")) {
            return Material.PEX;
        }
        if (w.contains("steel") || w.contains("iron") || SCHEDULE.matcher(w).find()) {
            return Material.STEEL;
        }
        return w.matches(".*\\btype [klm]\\b.*") ? Material.COPPER : null;
    }

    private static double sizeIn(String w) {
        Matcher fraction = FRACTION.matcher(w);
        if (fraction.find()) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            return whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
        }
        Matcher number = NUMBER.matcher(w);
        return number.find() ? Double.parseDouble(number.group()) : Double.NaN;
    }

    private static String inchName(double size, Material material, String w) {
        String letter = "";
        if (material == Material.COPPER) {
            Matcher type = TYPE.matcher(w);
            letter = " " + (type.find() ? type.group(1).toUpperCase(Locale.ROOT) : "L");
        }
        for (String inches : INCHES) {
            if (sizeIn(inches) == size) {
                return inches + " in " + word(material) + letter;
            }
        }
        return "";
    }

    private static String metricName(double outer, double wall, Material material) {
        return number(outer) + " x " + number(wall) + " mm " + word(material);
    }

    private static String number(double x) {
        return x == Math.rint(x) ? Long.toString((long) x) : Double.toString(x);
    }

    private static String word(Material material) {
        return material.name().toLowerCase(Locale.ROOT);
    }

    private static List<PipeSize> table() {
        List<PipeSize> all = new ArrayList<>();
        for (Material m : List.of(Material.STEEL, Material.GALVANIZED, Material.STAINLESS)) {
            inches(all, m, "", STEEL_OUTER, STEEL_INNER);
            inches(all, m, HEAVY, STEEL_OUTER, STEEL_HEAVY);
        }
        inches(all, Material.COPPER, " L", COPPER_OUTER, COPPER_L);
        inches(all, Material.COPPER, " K", COPPER_OUTER, COPPER_K);
        inches(all, Material.COPPER, " M", COPPER_OUTER, COPPER_M);
        inches(all, Material.PEX, "", PEX_OUTER, PEX_INNER);
        metric(all, Material.COPPER, COPPER_METRIC);
        metric(all, Material.PEX, PEX_METRIC);
        return List.copyOf(all);
    }

    private static void inches(List<PipeSize> all, Material m, String letter, double[] outer, double[] inner) {
        for (int i = 0; i < outer.length; i++) {
            all.add(new PipeSize(INCHES[i] + " in " + word(m) + letter, m, outer[i] / 1000, inner[i] / 1000));
        }
    }

    private static void metric(List<PipeSize> all, Material m, double[][] outerAndWall) {
        for (double[] p : outerAndWall) {
            all.add(new PipeSize(metricName(p[0], p[1], m), m, p[0] / 1000, (p[0] - 2 * p[1]) / 1000));
        }
    }
}
