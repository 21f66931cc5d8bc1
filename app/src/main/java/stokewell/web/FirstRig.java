package stokewell.web;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.file.Units;
import stokewell.loop.PipeSize;
import stokewell.rig.Dimension;

/**
 * A first rig of a person's answers, as a file that he can read and go on with. What he did not say is guessed, and the file
 * says so. Sizes that belong to safety (the vent's bore, the header above everything, no valve) are chosen
 * so that the check finds no stop; what only he can know is left open, so that the check asks it.
 */
final class FirstRig {

    /** Room over the store for its lid, the header and the vent's end over that, m. */
    private static final double ABOVE = 0.7;
    /** From the header's water to the ceiling, m: the vent ends 45 cm over the water and stays in the warm room. */
    private static final double UNDER_CEILING = 0.55;
    /** From the header's water down to a radiator's middle, m: half its height, and a hand over it. */
    private static final double BELOW_LEVEL = 0.35;
    /** Wood in one load for each cubic metre of store, kg/m3: common practice, a third of its heat warms the water by some 35 K. */
    private static final double LOAD_FOR_STORE = 25;
    /** Where a store hangs that is to fill by gravity, m above the floor. */
    private static final double HUNG = 1.25;

    private final Map<String, String> answers;
    private final UnitSystem units;
    private final ToDoubleFunction<String> number;
    private final StringBuilder out = new StringBuilder();

    FirstRig(Map<String, String> answers, UnitSystem units, ToDoubleFunction<String> number) {
        this.answers = answers;
        this.units = units;
        this.number = number;
    }

    /** A stove of a size. All common practice, no source: the person puts his own in. */
    private record Size(
            double mass,
            double surface,
            double height,
            double firebox,
            double hearth,
            double brick,
            double inlet,
            double flue,
            double load,
            double coil,
            double coilWater,
            double coilMetal,
            double coilLength) {

        static Size of(String answer) {
            return switch (answer) {
                case "small" -> new Size(120, 1.7, 0.7, 0.055, 0.7, 30, 20e-4, 0.15, 3.2, 0.45, 0.004, 11, 3.5);
                case "large" -> new Size(330, 3.8, 1.0, 0.19, 1.7, 160, 60e-4, 0.2, 11, 1.3, 0.012, 36, 10.5);
                default -> new Size(200, 2.7, 0.8, 0.11, 1.2, 60, 34e-4, 0.15, 6, 0.85, 0.0075, 22, 7);
            };
        }
    }

    String yaml() {
        Size size = Size.of(answers.get("stove"));
        boolean gravity = answers.get("loop").equals("gravity");
        head();
        room();
        stove(size);
        double top = store(gravity);
        loop(size, gravity, top);
        emitter(size, gravity, top);
        return out.toString();
    }

    private void line(String text, Object... values) {
        out.append(values.length == 0 ? text : String.format(java.util.Locale.ROOT, text, values))
                .append('\n');
    }

    /** A quantity as this person writes it. */
    private String q(double si, Dimension is) {
        return Quantity.write(si, is, units, 3);
    }

    /** A length as it is read from this person's tape. */
    private String m(double si) {
        if (units == UnitSystem.SI) return q(si, Dimension.LENGTH);
        double inches = si / Units.INCH;
        if (inches < 1.5) return eighths(inches);
        return inches < 12 ? eighths(Math.rint(2 * inches) / 2) : feet(Math.rint(2 * inches) / 2);
    }

    private static String feet(double inches) {
        long feet = (long) (inches / 12);
        double rest = inches - 12 * feet;
        return feet + " ft" + (rest == 0 ? "" : " " + eighths(rest));
    }

    private static String eighths(double inches) {
        long all = Math.max(1, Math.round(8 * inches));
        long up = all % 8;
        long by = up == 0 ? 1 : Long.lowestOneBit(up);
        String part = up == 0 ? "" : up / by + "/" + 8 / by;
        return (all < 8 ? part : all / 8 + (part.isEmpty() ? "" : " " + part)) + " in";
    }

    /** A pipe of the trade's sizes that is as wide. */
    private String pipe(double bore) {
        if (units == UnitSystem.SI) return q(bore, Dimension.LENGTH);
        return PipeSize.all().stream()
                .filter(p -> p.material() == PipeSize.Material.STEEL && !p.heavy() && p.inner() > 0.98 * bore)
                .findFirst()
                .map(PipeSize::name)
                .orElseGet(() -> m(bore));
    }

    /** A setting: whole degrees. */
    private String degrees(double kelvin) {
        return Quantity.write(kelvin, Dimension.TEMPERATURE, units, 2);
    }

    /** A difference of settings: whole degrees. */
    private String apart(double kelvin) {
        double whole = units == UnitSystem.US ? Math.rint(1.8 * kelvin) / 1.8 : kelvin;
        return q(whole, Dimension.TEMPERATURE_DIFFERENCE);
    }

    private void head() {
        line(
                "# Made from your answers; all that you did not say is guessed, by common practice: put in what you measure.");
        line("# This is a sum, not an approval: local code and a licensed person decide.");
        line("");
        line(
                "name: \"%s\"",
                answers.get("name").replaceAll("[\\p{Cntrl}\"\\\\]", " ").strip());
        line("");
        line("place:");
        line("  latitude: 45 N               # guessed: sets the sun");
        line("");
        line("weather:");
        line("  low: %s", answers.get("low"));
        line("  high: %-20s  # guessed: " + apart(8) + " over the low", degrees(number.applyAsDouble("low") + 8));
        line("");
    }

    private void room() {
        line("room:");
        line("  length: %s", answers.get("length"));
        line("  width: %s", answers.get("width"));
        line("  height: %s", answers.get("height"));
        line(
                "  walls: %s",
                switch (answers.get("walls")) {
                    case "bare" -> m(0.025) + " softwood";
                    case "block" -> m(0.2) + " hollow block";
                    case "thick" -> m(0.012) + " plywood, " + m(0.15) + " mineral wool, " + m(0.02) + " softwood";
                    default -> m(0.012) + " plywood, " + m(0.09) + " mineral wool, " + m(0.02) + " softwood";
                });
        line(
                "  roof: %s",
                switch (answers.get("roof")) {
                    case "bare" -> m(0.025) + " softwood";
                    case "good" -> m(0.012) + " plywood, " + m(0.25) + " mineral wool, " + m(0.02) + " softwood";
                    default -> m(0.012) + " plywood, " + m(0.1) + " mineral wool, " + m(0.02) + " softwood";
                });
        line("  floor:");
        switch (answers.get("floor")) {
            case "boards" -> line("    boards: {layers: [%s softwood, %s mineral wool]}", m(0.025), m(0.05));
            case "lined" ->
                line(
                        "    slab: {thickness: %s, edge: %s}",
                        m(0.12), Quantity.write(1.8, Dimension.THERMAL_RESISTANCE, units, 2));
            default -> line("    slab: {thickness: %s}", m(0.12));
        }
        double area = number.applyAsDouble("length") * number.applyAsDouble("width");
        line("  windows:");
        line("    - {area: %s, facing: south}   # guessed", q(Math.max(0.5, 0.04 * area), Dimension.AREA));
        line("  doors:");
        line("    - area: %s                # guessed", q(2, Dimension.AREA));
        line("      opens: [{at: \"9:00\", lasting: 3 min}, {at: \"15:00\", lasting: 3 min}]");
        line(
                "  leakage: {at50Pa: %s 1/h}",
                switch (answers.get("leaks")) {
                    case "tight" -> "5";
                    case "draughty" -> "28";
                    default -> "13";
                });
        line("  contents: %-16s  # guessed: tools, benches, timber", q(36000 * area, Dimension.HEAT_CAPACITY));
        line("");
    }

    private void stove(Size s) {
        line("stove:                           # a %s one, guessed; weigh and measure yours", answers.get("stove"));
        line("  mass: %s", q(s.mass, Dimension.MASS));
        line("  surface: %s", q(s.surface, Dimension.AREA));
        line("  height: %s", m(s.height));
        boolean us = units == UnitSystem.US;
        line(
                "  firebox: %s",
                us
                        ? String.format(java.util.Locale.ROOT, "%.1f ft3", s.firebox / 0.0283168)
                        : q(s.firebox, Dimension.VOLUME));
        line("  hearth: %s", q(s.hearth, Dimension.AREA));
        line("  brick: %s", q(s.brick, Dimension.MASS));
        line("  air inlet: %s", q(s.inlet, Dimension.AREA));
        line("");
        line("flue: {diameter: %s, height: %s}   # guessed", m(s.flue), m(5));
        line("");
        line("fuel: {species: mixed hardwood, moisture: 20 %}   # guessed: split and stacked for a year");
        line("");
        line("habit:                           # guessed: when you lay wood on, and how much");
        line("  clock:");
        line("    loads:");
        for (String at : new String[] {"8:00", "10:00", "12:00", "14:00", "16:00"}) {
            line("      - {at: \"%s\", mass: %s}", at, q(load(s), Dimension.MASS));
        }
        line("    skip above: %s           # no more wood on a full store", degrees(353.15));
        line("");
    }

    /** A whole load, or what a small store takes of it without boiling, kg. */
    private double load(Size s) {
        return Math.min(s.load, Math.max(2, LOAD_FOR_STORE * number.applyAsDouble("store")));
    }

    /** Returns where its water ends, m above the floor. */
    private double store(boolean gravity) {
        double volume = number.applyAsDouble("store");
        double room = number.applyAsDouble("height");
        double elevation = gravity ? HUNG : 0.3;
        double free = Math.max(0.3, room - elevation - (gravity ? 0.35 : ABOVE));
        line("store:");
        double top;
        if (gravity) {
            double diameter = Math.min(free, Math.min(1.1, Math.cbrt(volume / Math.PI * 4 / 1.6)));
            line("  shape:");
            line(
                    "    lying: {diameter: %s, length: %s}   # holds what you said, under your ceiling",
                    m(diameter), m(volume / (Math.PI / 4 * diameter * diameter)));
            top = elevation + diameter;
        } else {
            double height = Math.min(free, Math.cbrt(volume / Math.PI * 4 * 4));
            line("  shape:");
            line(
                    "    round: {diameter: %s, height: %s}   # holds what you said, under your ceiling",
                    m(Math.sqrt(volume / height / Math.PI * 4)), m(height));
            top = elevation + height;
        }
        double thick = switch (answers.get("jacket")) {
            case "thin" -> 0.05;
            case "thick" -> 0.3;
            default -> 0.15;
        };
        line("  jacket: %s mineral wool", m(thick));
        line("  lid: %s mineral wool", m(thick));
        line("  base: %s XPS", m(Math.min(0.15, thick)));
        line("  standing: blocks");
        line("  elevation: %-18s  # guessed", m(elevation));
        line("");
        return top;
    }

    private void loop(Size s, boolean gravity, double top) {
        line("pickups:");
        line("  - name: coil                   # steel pipe round the firebox, guessed");
        line("    kind: coil");
        line("    area: %s", q(s.coil, Dimension.AREA));
        line("    volume: %s", q(s.coilWater, Dimension.VOLUME));
        line("    metal: %s", q(s.coilMetal, Dimension.MASS));
        line("    bore: %s", pipe(gravity ? 0.041 : 0.035));
        line("    length: %s", m(gravity ? 0.6 * s.coilLength : s.coilLength));
        line("    elevation: %s", m(0.55 * s.height));
        line("");
        line("loop:                            # open and vented; nothing that shuts between fire and vent");
        if (gravity) {
            line("  supply: {length: %s, bore: %s, insulation: %s, elbows: 2}", m(2.2), pipe(0.041), m(0.03));
            line("  back: {length: %s, bore: %s, insulation: %s, elbows: 2}", m(2.6), pipe(0.041), m(0.03));
        } else {
            line("  supply: {length: %s, bore: %s, insulation: %s}", m(4), pipe(0.027), m(0.03));
            line("  back: {length: %s, bore: %s, insulation: %s}", m(4), pipe(0.027), m(0.03));
            line(
                    "  pump: {shutoff head: %s, free flow: %s, power: 25 W}   # guessed",
                    Quantity.write(25000, Dimension.HEAD, units, 2), q(5e-4, Dimension.VOLUME_FLOW));
        }
        line("  header: {water: %s, level: %s, vent: %s}", q(0.03, Dimension.VOLUME), m(level(top)), pipe(0.035));
        line("");
    }

    /** Of the header's water, m: under the ceiling, over the store. */
    private double level(double top) {
        return Math.max(top + 0.1, number.applyAsDouble("height") - UNDER_CEILING);
    }

    private void emitter(Size s, boolean gravity, double top) {
        boolean fan = answers.get("emitter").equals("fan");
        line("emitters:");
        if (fan) {
            line("  - air tubes:");
            line("      name: fan");
            line("      count: %d                  # guessed", Math.round(20 + 12 * s.coil));
            line("      bore: %s", m(0.05));
            line("      length: %s", m(0.8));
            line("      fan: {flow: %s, power: 55 W}", q(0.1 * Math.sqrt(s.coil), Dimension.VOLUME_FLOW));
        } else {
            line("  - radiator:                    # guessed; on bare wide pipe, above the store's middle");
            line("      rated power: %s", q(4500 * s.coil, Dimension.POWER));
            line("      elevation: %s", m(level(top) - BELOW_LEVEL));
            line("      circuit:");
            line("        supply: {length: %s, bore: %s, elbows: 2}", m(2), pipe(0.035));
            line("        back: {length: %s, bore: %s, elbows: 3}", m(3), pipe(0.035));
        }
        if (gravity && !fan) return;
        line("");
        line("switches:");
        if (!gravity) {
            line("  - drives: pump                 # when the coil is hotter than the store");
            line("    differential:");
            line("      hot: {at: outlet, lag: 45 s}");
            line("      cold: {at: store, height: 10 %}");
            line("      on: %s", apart(8));
            line("      off: %s", apart(2));
            line("    low limit:                   # no cold water into the fire: tar");
            line("      sensor: {at: outlet, lag: 45 s}");
            line("      on: %s", degrees(333.15));
            line("      off: %s", degrees(325.15));
        }
        if (fan) {
            line("  - drives: fan                  # when the room grows cold and the store is warm");
            line("    thermostat: {sensor: {at: room, lag: 3 min}, on: %s, off: %s}", degrees(285.15), degrees(287.15));
            line("    low limit:");
            line("      sensor: {at: store, height: 80 %}");
            line("      on: %s", degrees(311.15));
            line("      off: %s", degrees(306.15));
        }
    }
}
