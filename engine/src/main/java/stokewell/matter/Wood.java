package stokewell.matter;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Firewood by the names people know, and the sums that go with moisture, cords and steres.
 *
 * <p>Dry density is oven-dry mass over the volume of the fresh (green) wood, as foresters measure it. European species:
 * LWF Bavaria, Merkblatt 20 (2011) for spruce, pine, beech and birch, read; the others from Knigge and Schulz (1966)
 * from memory, each within 8 % of a published table of stacked steres. American species: FPL Wood Handbook, green
 * specific gravity, from memory. One tree differs from the next by 10 %. Net heating values: LWF groups, softwood 5.20
 * and hardwood 5.00 kWh per dry kg.
 *
 * <p>Moisture here is on wet mass unless a name says otherwise: 20 % wet is 25 % dry.
 */
public enum Wood {
    OAK(571, Wood.HARD, "oak", "white oak", "red oak"),
    BEECH(558, Wood.HARD, "beech"),
    HICKORY(620, Wood.HARD, "hickory", "shagbark hickory"),
    ASH(564, Wood.HARD, "ash", "white ash"),
    MAPLE(530, Wood.HARD, "maple", "sugar maple", "sycamore maple"),
    BIRCH(526, Wood.HARD, "birch", "yellow birch", "paper birch"),
    CHERRY(480, Wood.HARD, "cherry", "black cherry"),
    ELM(550, Wood.HARD, "elm"),
    HORNBEAM(690, Wood.HARD, "hornbeam"),
    ROBINIA(647, Wood.HARD, "robinia", "black locust", "locust"),
    ALDER(430, Wood.HARD, "alder"),
    POPLAR(370, Wood.HARD, "poplar", "aspen", "cottonwood"),
    WILLOW(330, Wood.HARD, "willow"),
    LARCH(487, Wood.SOFT, "larch", "tamarack"),
    DOUGLAS_FIR(430, Wood.SOFT, "douglas fir", "douglas-fir"),
    PINE(431, Wood.SOFT, "pine", "scots pine"),
    SPRUCE(379, Wood.SOFT, "spruce"),
    FIR(363, Wood.SOFT, "fir", "silver fir"),
    MIXED_HARDWOOD(550, Wood.HARD, "mixed hardwood", "hardwood"),
    MIXED_SOFTWOOD(405, Wood.SOFT, "mixed softwood", "softwood");

    /** A cord, 128 cubic feet stacked, m3. */
    public static final double CORD = 3.624556363776;

    /** A stere, one cubic metre stacked, m3. */
    public static final double STERE = 1;

    /** Wood in a stack, m3/m3: half-way between loose short splits (0.50) and tight metre splits (0.70); 85 of a cord's
     * 128 cubic feet is 0.66. Measure your own pile. */
    public static final double SOLID_SHARE = 0.65;

    /** Heat that drives a kilogram of water off at 25 °C, J/kg; ISO 18125, ISO 17225-1. */
    public static final double DRYING_HEAT = 2.443e6;

    /**
     * Net heat of char, J/kg. Ragland and Aerts, Bioresource Technology 37 (1991) 161 (from memory): 30 to 33 MJ/kg.
     */
    public static final double CHAR_HEAT = 32e6;

    /**
     * Char from dry wood in a stove, kg/kg; the same source (from memory): 0.15 to 0.25, more from large, slow-heated
     * logs.
     */
    public static final double CHAR_SHARE = 0.20;

    private static final double HARD = 5.00 * 3.6e6;
    private static final double SOFT = 5.20 * 3.6e6;

    private final double dryDensity;
    private final double netHeatDry;
    private final List<String> names;

    Wood(double dryDensity, double netHeatDry, String... names) {
        this.dryDensity = dryDensity;
        this.netHeatDry = netHeatDry;
        this.names = List.of(names);
    }

    /** Oven-dry mass in a cubic metre of solid wood, kg/m3. */
    public double dryDensity() {
        return dryDensity;
    }

    /** Net heat of a dry kilogram, J/kg. */
    public double netHeatDry() {
        return netHeatDry;
    }

    /** The species by a name or an alias, in any case. */
    public static Optional<Wood> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
        return Arrays.stream(values()).filter(w -> w.names.contains(wanted)).findFirst();
    }

    /** The main names, in order. */
    public static List<String> names() {
        return Arrays.stream(values()).map(w -> w.names.get(0)).toList();
    }

    /**
     * Mass of solid wood with its water, kg/m3. Shrinkage below 23 % moisture, up to 10 %, is left out.
     *
     * @param wet 0 to 0.7
     */
    public double density(double wet) {
        return dryDensity / (1 - wet);
    }

    /**
     * Mass of a stacked cubic metre, kg.
     *
     * @param wet 0 to 0.7
     * @param solidShare wood in the stack, see {@link #SOLID_SHARE}
     */
    public double stackedDensity(double wet, double solidShare) {
        return solidShare * density(wet);
    }

    /** Net heat as fired, J/kg. @param wet 0 to 0.88 */
    public double netHeat(double wet) {
        return netHeat(netHeatDry, wet);
    }

    /** Net heat of a stacked cubic metre as fired, J/m3. */
    public double stackedHeat(double wet, double solidShare) {
        return netHeat(wet) * stackedDensity(wet, solidShare);
    }

    /** Net heat of dry volatiles, J/kg, so that char and volatiles together give the whole. @param charShare kg/kg */
    public double volatileHeat(double charShare) {
        return volatileHeat(netHeatDry, charShare);
    }

    /**
     * Net heat of dry volatiles, J/kg.
     *
     * @param netDry of the whole, J/kg
     * @param charShare kg char per kg dry, 0 to 0.5
     */
    public static double volatileHeat(double netDry, double charShare) {
        return (netDry - charShare * CHAR_HEAT) / (1 - charShare);
    }

    /** Net heat as fired, J/kg; ISO 17225-1. @param netDry J per dry kg @param wet 0 to 0.88 */
    public static double netHeat(double netDry, double wet) {
        return netDry * (1 - wet) - DRYING_HEAT * wet;
    }

    /**
     * Gross heat as fired, J/kg.
     *
     * @param netDry J per dry kg
     * @param wet 0 to 1
     * @param fuel gives the water of hydrogen
     */
    public static double grossHeat(double netDry, double wet, Ultimate fuel) {
        return (netDry + DRYING_HEAT * fuel.waterOfHydrogen()) * (1 - wet);
    }

    /**
     * Moisture on wet mass from moisture on dry mass, as US tables and pin meters give it.
     *
     * @param dryBasis kg/kg, 0 or more
     */
    public static double wetFromDryBasis(double dryBasis) {
        return dryBasis / (1 + dryBasis);
    }

    /** Moisture on dry mass from moisture on wet mass. @param wet kg/kg, 0 to below 1 */
    public static double dryFromWetBasis(double wet) {
        return wet / (1 - wet);
    }

    /** Conductivity across the grain, W/(m K). FPL Wood Handbook eq. 4-15. @param gravity dry mass over volume in use,
     *  0.3 to 0.8 @param dryBasis moisture on dry mass, 0 to 0.25 */
    public static double conductivity(double gravity, double dryBasis) {
        return gravity * (0.1941 + 0.4064 * dryBasis) + 0.01864;
    }
}
