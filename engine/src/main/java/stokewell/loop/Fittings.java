package stokewell.loop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Fittings and valves with the loss coefficient K of {@code Δp = K ρ v²/2}, v in the bore of the fitting's pipe.
 *
 * <p>Sources: threaded and flanged fittings and valves, the tables of White, Fluid Mechanics, and Moody (1944) as
 * commonly reprinted; entrances, exit from handbook tables. Makers and tables spread by ±30 %. Ball valve, union,
 * reducer, strainer and soldered elbow are common practice.
 */
public enum Fittings {
    ELBOW_90_THREADED(1.5, "elbow", "90 elbow", "threaded elbow", "90 threaded elbow", "screwed elbow", "bend"),
    ELBOW_90_SOLDERED(0.9, "soldered elbow", "sweat elbow", "copper elbow", "press elbow"),
    ELBOW_90_FLANGED(0.3, "flanged elbow", "90 flanged elbow", "welded elbow"),
    ELBOW_90_LONG(0.7, "long elbow", "long radius elbow", "long radius threaded elbow", "sweep", "long bend"),
    ELBOW_90_LONG_FLANGED(0.2, "long radius flanged elbow", "long radius welded elbow", "pulled bend"),
    ELBOW_45(0.4, "45 elbow", "45 threaded elbow", "45 bend"),
    RETURN_180(1.5, "return bend", "180 return", "180 return bend", "u bend"),
    RETURN_180_FLANGED(0.2, "flanged return bend", "180 flanged return"),
    TEE_LINE(0.9, "tee", "tee line", "tee through", "tee run", "threaded tee line"),
    TEE_LINE_FLANGED(0.2, "flanged tee line", "flanged tee run"),
    TEE_BRANCH(2.0, "tee branch", "tee side", "threaded tee branch"),
    TEE_BRANCH_FLANGED(1.0, "flanged tee branch", "welded tee branch"),
    UNION(0.08, "union", "threaded union", "dielectric union", "coupling", "socket"),
    REDUCER(0.3, "reducer", "bushing"),
    GLOBE_VALVE(10, "globe valve", "globe", "stop valve"),
    ANGLE_VALVE(2, "angle valve", "angle"),
    GATE_VALVE(0.15, "gate valve", "gate", "open gate valve"),
    GATE_VALVE_HALF_CLOSED(2.1, "half closed gate valve", "half open gate valve"),
    BALL_VALVE(0.05, "ball valve", "ball", "full bore ball valve"),
    SWING_CHECK(2, "swing check", "swing check valve", "check valve", "flap valve", "flap check", "non return valve"),
    STRAINER(2, "strainer", "y strainer", "dirt trap", "filter"),
    ENTRANCE_SHARP(0.5, "entrance", "sharp entrance", "inlet", "tank outlet"),
    ENTRANCE_PROJECTING(0.9, "projecting entrance", "projecting inlet", "dip tube entrance"),
    ENTRANCE_ROUNDED(0.045, "rounded entrance", "rounded inlet"),
    EXIT(1.0, "exit", "outlet", "tank inlet");

    /** Cubic metres an hour at 1 bar, squared, to m and Pa: K = this A²/Kv². */
    private static final double KV_TO_K = 2 * 1e5 / 1000 * 3600.0 * 3600.0;

    private final double k;
    private final List<String> names;

    Fittings(double k, String... names) {
        this.k = k;
        this.names = Arrays.stream(names).map(Fittings::plain).toList();
    }

    /** Loss coefficient, of the dynamic pressure in the bore. */
    public double k() {
        return k;
    }

    /**
     * Straight pipe that loses as much, m.
     *
     * @param bore inside diameter, m
     * @param darcy Darcy friction factor of that pipe
     */
    public double equivalentLength(double bore, double darcy) {
        return k * bore / darcy;
    }

    /**
     * The fitting that the words name, whatever their order, case, plural or punctuation: "elbow, 90°", "check valves".
     */
    public static Optional<Fittings> named(String words) {
        String plain = plain(words);
        for (Fittings f : values()) {
            if (f.names.contains(plain) || plain(f.name()).equals(plain)) {
                return Optional.of(f);
            }
        }
        return Optional.empty();
    }

    /**
     * Loss of pressure, Pa: odd in the flow.
     *
     * @param k sum of loss coefficients
     * @param massFlow kg/s, either sign
     * @param bore inside diameter, m
     * @param density kg/m³
     */
    public static double pressureLoss(double k, double massFlow, double bore, double density) {
        double area = Math.PI / 4 * bore * bore;
        return k * massFlow * Math.abs(massFlow) / (2 * density * area * area);
    }

    /** Derivative of {@link #pressureLoss} by the mass flow, Pa s/kg. */
    public static double pressureLossSlope(double k, double massFlow, double bore, double density) {
        double area = Math.PI / 4 * bore * bore;
        return k * Math.abs(massFlow) / (density * area * area);
    }

    /**
     * Loss coefficient of a valve that is sold by its Kv: m³/h of cold water at 1 bar (EN 60534; from memory).
     *
     * @param kv m³/h at 1 bar, greater than 0
     * @param bore of the pipe whose speed K refers to, m
     */
    public static double kFromKv(double kv, double bore) {
        double area = Math.PI / 4 * bore * bore;
        return KV_TO_K * area * area / (kv * kv);
    }

    /** The Kv of a US Cv (gallons a minute at 1 psi): Kv = 0.865 Cv (from memory). */
    public static double kvFromCv(double cv) {
        return 0.865 * cv;
    }

    /** Borda-Carnot: sudden widening, K on the smaller bore. */
    public static double wideningK(double smallBore, double largeBore) {
        double ratio = smallBore / largeBore;
        double share = 1 - ratio * ratio;
        return share * share;
    }

    private static String plain(String words) {
        String[] parts = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", " ")
                .strip()
                .split(" ");
        return Arrays.stream(parts)
                .filter(w -> !w.equals("deg") && !w.equals("degree") && !w.equals("degrees"))
                .map(w -> w.length() > 3 && w.endsWith("s") && !w.endsWith("ss") ? w.substring(0, w.length() - 1) : w)
                .sorted()
                .reduce("", (a, b) -> a.isEmpty() ? b : a + " " + b);
    }
}
