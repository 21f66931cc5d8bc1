package stokewell.matter;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A solid that walls, tanks, floors and stoves are made of.
 *
 * <p>Library values are design values near 10 to 20 °C, dry, unless the name says otherwise; wet insulation or earth
 * conducts far more. Makers' declared values are better where they are known.
 *
 * @param name         as people say it, lower case
 * @param conductivity W/(m K)
 * @param density      kg/m3
 * @param specificHeat J/(kg K)
 */
public record Material(String name, double conductivity, double density, double specificHeat) {

    private record Entry(Material material, List<String> aliases) {}

    private static Entry of(String name, double k, double rho, double c, String... aliases) {
        return new Entry(new Material(name, k, rho, c), List.of(aliases));
    }

    // Sources. A: ISO 10456:2007 table 3, read. B: the same table, from memory. C: CIBSE Guide A table 3, read.
    // D: typical declared values of the trade, from memory. E: a handbook of refractories or materials, from memory.
    // spotless:off
    private static final List<Entry> LIBRARY = List.of(
        of("xps", 0.034, 35, 1450, "extruded polystyrene", "pink board", "blue board"),        // D
        of("eps", 0.036, 20, 1450, "expanded polystyrene", "polystyrene", "bead board"),       // D
        of("pir", 0.024, 32, 1400, "polyiso", "polyisocyanurate"),                   // D, aged foil-faced board
        of("pur", 0.028, 35, 1400, "polyurethane", "spray foam"),                              // C
        of("mineral wool", 0.038, 40, 1030, "rock wool", "stone wool", "rockwool"),            // B
        of("glass wool", 0.040, 16, 1030, "fibreglass", "fiberglass"),                         // B
        of("cellulose", 0.040, 50, 1600, "blown cellulose"),                                   // D
        of("wood fibre board", 0.045, 160, 2000, "wood fiber board"),                          // D
        of("cork", 0.045, 120, 1560, "cork board"),                                            // B
        of("sheep wool", 0.040, 25, 1600, "wool"),                                             // D
        of("straw", 0.065, 100, 2000, "straw bale", "straw bales"),                  // D, heat across the stalks
        of("sawdust", 0.065, 200, 2000, "wood shavings"),                                      // D, dry and loose
        of("cellular glass", 0.048, 135, 1000, "foam glass", "foamed glass"),                  // C
        of("foam glass gravel", 0.085, 160, 1000, "glass gravel"),                             // D, compacted
        of("vermiculite", 0.066, 110, 1000, "expanded vermiculite"),                           // D, loose
        of("vermiculite board", 0.16, 600, 950),                                               // D, firebox lining
        of("perlite", 0.050, 90, 900, "expanded perlite"),                                     // D, loose
        of("ceramic fibre blanket", 0.12, 128, 1050, "ceramic fiber blanket", "ceramic wool",
            "ceramic blanket"),                                                                // E, near 400 °C
        of("calcium silicate board", 0.083, 260, 1000, "calcium silicate"),                    // E, near 400 °C
        of("plywood", 0.13, 500, 1600),                                                        // B
        of("osb", 0.13, 650, 1700, "oriented strand board"),                                   // B
        of("particle board", 0.14, 600, 1700, "chipboard"),                                    // B
        of("softwood", 0.13, 500, 1600, "pine", "spruce", "timber", "lumber"),                 // A
        of("hardwood", 0.18, 700, 1600, "oak"),                                                // A
        of("gypsum board", 0.25, 900, 1000, "gypsum", "plasterboard", "drywall"),              // B
        of("lime plaster", 0.80, 1600, 1000, "plaster"),                                       // B
        of("cement render", 1.00, 1800, 1000, "render", "mortar", "stucco"),                   // B
        of("concrete", 1.65, 2200, 1000),                                                      // A
        of("dense concrete", 2.00, 2400, 1000),                                                // A
        of("reinforced concrete", 2.3, 2300, 1000, "concrete slab", "slab"),                   // A, 1 % steel
        of("screed", 1.15, 1800, 1000, "light concrete"),                            // A, concrete of 1800 kg/m3
        of("concrete block", 1.63, 2100, 1000, "block", "dense block"),              // read in a trade table, solid
        of("hollow block", 1.1, 1400, 1000, "cinder block", "cmu"),                  // D, whole block, empty cores
        of("aerated concrete", 0.16, 500, 1000, "aac", "aircrete"),                            // read in a trade table
        of("brick", 0.77, 1750, 1000, "outer brick"),                                // read in worked U-values
        of("inner brick", 0.56, 1700, 1000),                                                   // read, protected leaf
        of("adobe", 0.60, 1600, 1000, "earth block", "cob"),                                   // D
        of("firebrick", 1.0, 2000, 1000, "fire brick", "chamotte"),                            // E
        of("insulating firebrick", 0.20, 600, 1000, "ifb"),                                    // E, near 600 °C
        of("soapstone", 3.3, 2950, 980, "steatite"),                                           // E
        of("granite", 2.8, 2600, 1000),                                                        // B
        of("limestone", 1.7, 2200, 1000),                                                      // B
        of("steel", 50, 7800, 450, "mild steel", "carbon steel"),                              // A
        of("stainless steel", 17, 7900, 460, "stainless"),                                     // A
        of("cast iron", 50, 7500, 450, "iron"),                                                // B, CIBSE 56
        of("copper", 380, 8900, 380),                                                          // A
        of("brass", 120, 8400, 380),                                                           // A, density and heat B
        of("aluminium", 160, 2800, 880, "aluminum"),                                           // A
        of("zinc", 110, 7200, 380),                                                            // B
        of("lead", 35, 11300, 130),                                                            // B
        of("clay soil", 1.5, 1500, 2000, "clay", "silt"),                            // B, volumetric 3.0 MJ/(m3 K)
        of("sand", 2.0, 2000, 1000, "gravel", "sandy soil", "soil", "earth"),        // B, moist, 2.0 MJ/(m3 K)
        of("dry sand", 0.35, 1600, 800),                                                       // E
        of("rock", 3.5, 2500, 800, "bedrock"),                                       // B, volumetric 2.0 MJ/(m3 K)
        of("glass", 1.0, 2500, 750, "soda-lime glass"),                                        // A
        of("twin-wall polycarbonate", 0.033, 170, 1200, "polycarbonate"),            // D, 10 mm sheet as a whole
        of("solid polycarbonate", 0.20, 1200, 1200),                                           // B
        of("acrylic", 0.20, 1180, 1500, "plexiglass"),                                         // B
        of("polyethylene", 0.42, 940, 1900, "hdpe", "pex"),                          // B, mean of high and low density
        of("polypropylene", 0.22, 910, 1800, "pp"),                                            // B
        of("pvc", 0.17, 1390, 900),                                                            // A, density and heat B
        of("rubber", 0.17, 1200, 1400, "epdm"),                                                // A, density and heat B
        of("fibreglass laminate", 0.30, 1900, 1100, "grp", "frp"),                             // D
        of("elastomeric foam", 0.038, 60, 1500, "rubber foam", "pipe foam"),         // D, pipe lagging at 40 °C
        of("bitumen felt", 0.23, 1100, 1000, "roofing felt"),                                  // A
        of("asphalt", 0.70, 2100, 1000));                                                      // A
    // spotless:on

    public Material {
        if (!(conductivity > 0 && density > 0 && specificHeat > 0)) {
            throw new IllegalArgumentException(
                    name + " needs a conductivity, a density and a specific heat above 0, not " + conductivity
                            + " W/m.K, " + density + " kg/m3, " + specificHeat + " J/kg.K");
        }
    }

    /** The library's material of a name or an alias, in any case. */
    public static Optional<Material> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return LIBRARY.stream()
                .filter(e -> e.material.name.equals(wanted) || e.aliases.contains(wanted))
                .map(Entry::material)
                .findFirst();
    }

    /** The main names in the library's order: insulation first, earth and plastics last. */
    public static List<String> names() {
        return LIBRARY.stream().map(e -> e.material.name).toList();
    }

    /** Heat stored in a cubic metre, J/(m3 K). */
    public double volumetricHeat() {
        return density * specificHeat;
    }

    /** Thermal diffusivity, m2/s. */
    public double diffusivity() {
        return conductivity / volumetricHeat();
    }
}
