package stokewell.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.file.Quantity;
import stokewell.file.RigValue;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.rig.Layer;

/** The single changes worth trying on a rig: each one that its own numbers leave room for. */
final class HelpList {

    /** Insulation is added in this much, m. */
    private static final double MORE = 0.1;
    /** Wood as dry as a shed makes it, share of all its weight: common practice, no source. */
    private static final double DRY = 0.15;
    /** Airtightness that tape and seals reach in a workshop, exchanges a second at 50 Pa: common practice, no source. */
    private static final double TIGHT = 3.0 / 3600;

    private final Map<String, RigValue> values = new LinkedHashMap<>();
    private final List<Help> helps = new ArrayList<>();
    private final UnitSystem units;

    private HelpList(List<RigValue> read, UnitSystem units) {
        for (RigValue v : read) values.put(v.key(), v);
        this.units = units;
    }

    /** All that are worth trying, unranked. @param read every value of the rig */
    static List<Help> of(List<RigValue> read, UnitSystem units) {
        HelpList list = new HelpList(read, units);
        list.store();
        list.room();
        list.fire();
        list.water();
        list.switches();
        return List.copyOf(list.helps);
    }

    private void add(String id, String what, Help.Effort effort, String... settings) {
        helps.add(new Help(id, what, effort, List.of(settings)));
    }

    private double si(String key) {
        RigValue v = values.get(key);
        return v == null ? Double.NaN : v.si();
    }

    private String said(double si, Dimension is) {
        return Quantity.write(si, is, units, 3);
    }

    /** A setting exact enough to be run, in the person's units. */
    private String set(String key, double si, Dimension is) {
        return key + "=" + Quantity.write(si, is, units, 5);
    }

    private void store() {
        thicker("store.base", "base", "under the store", "XPS", Help.Effort.DAYS);
        thicker("store.jacket", "jacket", "round the store", "mineral wool", Help.Effort.DAY);
        thicker("store.lid", "lid", "over the store", "mineral wool", Help.Effort.HOUR);
        if (si("store.realLoss") > 1.25) {
            add(
                    "stubs",
                    "Lag the store's stubs, legs and lid until its real loss is 1.2 of the reckoned",
                    Help.Effort.HOUR,
                    "store.realLoss=1.2");
        }
        bigger();
    }

    private void thicker(String key, String id, String where, String orElse, Help.Effort effort) {
        RigValue v = values.get(key);
        if (v == null || !(v.value() instanceof Layer layer)) return;
        boolean none = layer.thickness() < 0.002 || layer.conductivity() > 0.2;
        double thickness = none ? MORE : Math.min(layer.thickness() + MORE, 0.5);
        if (thickness < layer.thickness() + 0.02) return;
        String of = none ? orElse : layer.material();
        String layers = Quantity.write(thickness, Dimension.LENGTH, units, 5) + " " + of;
        String k = none || stokewell.matter.Material.named(of).isPresent()
                ? ""
                : " k=" + Quantity.write(layer.conductivity(), Dimension.CONDUCTIVITY, units, 4);
        add(id, said(MORE, Dimension.LENGTH) + " more " + of + " " + where, effort, key + "=" + layers + k);
    }

    private void bigger() {
        String round = "store.shape.round.";
        String square = "store.shape.square.";
        String lying = "store.shape.lying.";
        String grow = "Half as much water again in the store";
        double room = si("room.height") - si("store.elevation") - 0.2;
        if (values.containsKey(round + "height")) {
            double height = si(round + "height");
            if (1.5 * height <= room) {
                add(
                        "bigger",
                        grow + ", taller",
                        Help.Effort.DAYS,
                        set(round + "height", 1.5 * height, Dimension.LENGTH));
            } else {
                double wide = Math.sqrt(1.5) * si(round + "diameter");
                add("bigger", grow + ", wider", Help.Effort.DAYS, set(round + "diameter", wide, Dimension.LENGTH));
            }
        } else if (values.containsKey(square + "length")) {
            add(
                    "bigger",
                    grow + ", longer",
                    Help.Effort.DAYS,
                    set(square + "length", 1.5 * si(square + "length"), Dimension.LENGTH));
        } else if (values.containsKey(lying + "length")) {
            add(
                    "bigger",
                    grow + ", longer",
                    Help.Effort.DAYS,
                    set(lying + "length", 1.5 * si(lying + "length"), Dimension.LENGTH));
        }
    }

    private void room() {
        double leak = si("room.leakage.at50Pa");
        if (leak > 1.2 * TIGHT) {
            double less = Math.max(TIGHT, 0.5 * leak);
            add(
                    "leaks",
                    "Seal doors, sills and eaves: from " + said(leak, Dimension.AIR_CHANGE) + " to "
                            + said(less, Dimension.AIR_CHANGE) + " at 50 Pa",
                    Help.Effort.DAY,
                    set("room.leakage.at50Pa", less, Dimension.AIR_CHANGE));
        }
        layered("room.roof.layers", "ceiling", "on the ceiling", Help.Effort.DAY);
        layered("room.walls.layers", "walls", "on the walls", Help.Effort.DAYS);
        layered("room.floor.boards.layers", "floor", "under the floor boards", Help.Effort.DAYS);
        double edge = si("room.floor.slab.edge");
        if (edge < 1.5) {
            add(
                    "edge",
                    "Foam round the edge of the slab, " + said(2.5, Dimension.THERMAL_RESISTANCE),
                    Help.Effort.DAYS,
                    set("room.floor.slab.edge", 2.5, Dimension.THERMAL_RESISTANCE));
        }
        glass();
        door();
    }

    private void layered(String key, String id, String where, Help.Effort effort) {
        List<String> layers = new ArrayList<>();
        for (int i = 0; values.containsKey(key + "." + i); i++)
            layers.add(values.get(key + "." + i).text(units));
        if (layers.isEmpty() || layers.size() > 20) return;
        String more = Quantity.write(MORE, Dimension.LENGTH, units, 5) + " mineral wool";
        layers.add(Math.max(0, layers.size() - 1), more);
        List<String> quoted = layers.stream().map(l -> '"' + l + '"').toList();
        add(
                id,
                said(MORE, Dimension.LENGTH) + " more mineral wool " + where,
                effort,
                key + "=[" + String.join(", ", quoted) + "]");
    }

    private void glass() {
        List<String> settings = new ArrayList<>();
        for (int i = 0; values.containsKey("room.windows." + i + ".u"); i++) {
            String key = "room.windows." + i + ".u";
            if (si(key) > 1.8) settings.add(set(key, 0.6 * si(key), Dimension.TRANSMITTANCE));
        }
        if (settings.isEmpty()) return;
        add("glass", "Shutters or a second pane at the windows", Help.Effort.DAY, settings.toArray(String[]::new));
    }

    private void door() {
        int worst = -1;
        for (int i = 0; values.containsKey("room.doors." + i + ".u"); i++) {
            double u = si("room.doors." + i + ".u");
            if (u > 1 && (worst < 0 || u * area(i) > si("room.doors." + worst + ".u") * area(worst))) worst = i;
        }
        if (worst < 0) return;
        add(
                "door",
                "Foam on the door of " + said(area(worst), Dimension.AREA),
                Help.Effort.DAY,
                set("room.doors." + worst + ".u", 0.7, Dimension.TRANSMITTANCE));
    }

    private double area(int door) {
        return si("room.doors." + door + ".area");
    }

    private void fire() {
        double moisture = si("fuel.moisture");
        boolean dry = values.containsKey("fuel.basis")
                && values.get("fuel.basis").text(units).equals("dry");
        double wet = dry ? moisture / (1 + moisture) : moisture;
        if (wet > DRY + 0.01) {
            double to = dry ? DRY / (1 - DRY) : DRY;
            String basis = dry ? "dry wood" : "all of it";
            add(
                    "drier",
                    "Wood dried one more summer: water " + said(to, Dimension.SHARE) + " of " + basis,
                    Help.Effort.NOTHING,
                    set("fuel.moisture", to, Dimension.SHARE));
        }
        int last = -1;
        while (values.containsKey("habit.clock.loads." + (last + 1) + ".mass")) last++;
        if (last >= 0) {
            double mass = si("habit.clock.loads." + last + ".mass");
            add(
                    "load",
                    "Half as much again in the last load: " + said(1.5 * mass, Dimension.MASS),
                    Help.Effort.NOTHING,
                    set("habit.clock.loads." + last + ".mass", 1.5 * mass, Dimension.MASS));
        }
    }

    private void water() {
        if (values.containsKey("pickups.0.area")) {
            double area = si("pickups.0.area");
            add(
                    "coil",
                    "A third more surface on the "
                            + values.get("pickups.0.name").text(units),
                    Help.Effort.DAYS,
                    set("pickups.0.area", 4 * area / 3, Dimension.AREA));
        }
        if (si("loop.supply.insulation") < 0.02) {
            add(
                    "pipes",
                    "Lag the loop's pipes with " + said(0.03, Dimension.LENGTH),
                    Help.Effort.HOUR,
                    set("loop.supply.insulation", 0.03, Dimension.LENGTH),
                    set("loop.back.insulation", 0.03, Dimension.LENGTH));
        }
        for (int i = 0; i < 20; i++) {
            String count = "emitters." + i + ".airTubes.count";
            if (values.containsKey(count)) {
                String more = String.format(Locale.ROOT, "%.0f", 1.5 * si(count));
                add("tubes", "Half as many air tubes again: " + more, Help.Effort.DAYS, count + "=" + more);
            }
            for (String kind : List.of("radiator", "fanCoil")) {
                String power = "emitters." + i + "." + kind + ".ratedPower";
                if (!values.containsKey(power)) continue;
                String name = values.containsKey("emitters." + i + "." + kind + ".name")
                        ? values.get("emitters." + i + "." + kind + ".name").text(units)
                        : "emitter";
                add(
                        "emitter-" + i,
                        "Half as much " + name + " again",
                        Help.Effort.DAYS,
                        set(power, 1.5 * si(power), Dimension.POWER));
            }
        }
    }

    private void switches() {
        for (int i = 0; values.containsKey("switches." + i + ".drives"); i++) {
            String at = "switches." + i + ".";
            String drives = values.get(at + "drives").text(units);
            double on = si(at + "thermostat.on");
            double off = si(at + "thermostat.off");
            if (Double.isFinite(on) && Double.isFinite(off) && on < off) {
                add(
                        "warmer-" + i,
                        "The thermostat of the " + drives + " " + said(2, Dimension.TEMPERATURE_DIFFERENCE) + " higher",
                        Help.Effort.NOTHING,
                        set(at + "thermostat.on", on + 2, Dimension.TEMPERATURE),
                        set(at + "thermostat.off", off + 2, Dimension.TEMPERATURE));
                add(
                        "cooler-" + i,
                        "The thermostat of the " + drives + " " + said(2, Dimension.TEMPERATURE_DIFFERENCE) + " lower",
                        Help.Effort.NOTHING,
                        set(at + "thermostat.on", on - 2, Dimension.TEMPERATURE),
                        set(at + "thermostat.off", off - 2, Dimension.TEMPERATURE));
            }
            double least = si(at + "lowLimit.on");
            if (!drives.equals("pump") && Double.isFinite(least) && least > 303) {
                add(
                        "low-limit-" + i,
                        "Let the " + drives + " run on until the store is " + said(5, Dimension.TEMPERATURE_DIFFERENCE)
                                + " cooler",
                        Help.Effort.NOTHING,
                        set(at + "lowLimit.on", least - 5, Dimension.TEMPERATURE),
                        set(at + "lowLimit.off", si(at + "lowLimit.off") - 5, Dimension.TEMPERATURE));
            }
        }
    }
}
