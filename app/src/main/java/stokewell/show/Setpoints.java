package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.HotLimits;
import stokewell.matter.Atmosphere;
import stokewell.matter.Water;
import stokewell.rig.Emitter;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Stove;
import stokewell.rig.Switch;
import stokewell.run.Night;
import stokewell.sheet.Parts;
import stokewell.sheet.SheetFacts;

/** Every setting and its reason. */
final class Setpoints {

    /** What is set, to what, and why. */
    record Line(String what, String setting, String why) {}

    private static final double K = 273.15;
    private static final double TAR = K + 55;

    private final SheetFacts facts;
    private final Rig rig;
    private final Measure as;
    private final Sizes sizes;
    private final List<Switch.Sensor> sensors;
    private final List<Line> lines = new ArrayList<>();

    private Setpoints(SheetFacts facts, Measure as) {
        this.facts = facts;
        this.as = as;
        rig = facts.rig();
        sizes = new Sizes(as);
        sensors = Parts.of(rig).sensors();
    }

    static List<Line> of(SheetFacts facts, Measure as) {
        Setpoints s = new Setpoints(facts, as);
        for (Switch w : s.rig.switches()) s.drive(w);
        s.floors();
        if (s.rig.loop() != null) s.water();
        s.fire();
        return s.lines;
    }

    /** Where a sensor sits, in words. */
    static String place(Switch.Sensor s, Rig rig) {
        return switch (s.at()) {
            case OUTLET -> "on the last pickup's outlet, close to the stove";
            case PICKUP -> "in the " + Plain.name(s.of().isEmpty() ? "last pickup" : s.of(), 24);
            case SUPPLY -> "on the hot pipe at the store";
            case BACK -> "on the cool pipe";
            case STORE -> "in the store at " + Numbers.percent(s.height()) + " of its height";
            case ROOM -> "in the room, off the wall, out of the stove's sight";
            case STOVE -> "on the stove's body";
            case OUTDOORS -> "outdoors, in the shade";
        };
    }

    private String number(Switch.Sensor s) {
        for (int i = 0; i < sensors.size(); i++) {
            Switch.Sensor o = sensors.get(i);
            boolean same = o.at() == s.at()
                    && (s.at() != Switch.Spot.STORE || o.height() == s.height())
                    && (s.at() != Switch.Spot.PICKUP || o.of().equals(s.of()));
            if (same) return "sensor " + (i + 1);
        }
        return "sensor";
    }

    private void add(String what, String setting, String why) {
        lines.add(new Line(what, setting, why));
    }

    private void drive(Switch s) {
        String name = Plain.name(s.drives(), 20);
        boolean pump = s.drives().equals("pump");
        int before = lines.size();
        Switch.Differential d = s.differential();
        if (d != null) {
            add(
                    name + ": " + number(d.hot()) + " over " + number(d.cold()),
                    "on " + difference(d.on()) + " hotter, off at " + difference(d.off()),
                    "Runs only while there is heat to bring; the gap keeps it steady.");
        }
        if (s.lowLimit() != null) low(name, pump, s.lowLimit());
        if (s.highLimit() != null) {
            add(
                    name + " always runs: " + number(s.highLimit().sensor()),
                    onOff(s.highLimit()),
                    pump && HotLimits.wrongWayRound(s.highLimit())
                            ? WRONG
                            : "Carries heat away before it boils at " + as.hot(HotLimits.boiling(rig)) + "; "
                                    + difference(HotLimits.boiling(rig)
                                            - s.highLimit().on()) + " are left.");
        }
        if (s.thermostat() != null) thermostat(name, pump, s.thermostat());
        if (s.hours() != null) {
            add(
                    name + ": hours",
                    hour(s.hours().from()) + " to " + hour(s.hours().until()),
                    "Runs in these hours only.");
        }
        if (lines.size() == before) add(name, "never", "Nothing switches it: it stands still.");
    }

    private void low(String name, boolean pump, Switch.Thermostat t) {
        String why;
        if (!pump) why = "Colder, it moves too little heat for its power: kept for later.";
        else if (t.off() < TAR) {
            why = "Below " + as.hot(TAR) + " metal in the fire gathers tar: brush it weekly.";
        } else why = "Above " + as.hot(TAR) + " metal in the fire gathers no tar.";
        add(name + " never runs below: " + number(t.sensor()), onOff(t), why);
    }

    private static final String WRONG = "WRONG WAY ROUND: it stops the pump when the fire is hot. Not to be built so.";

    private void thermostat(String name, boolean pump, Switch.Thermostat t) {
        boolean calls = t.on() < t.off();
        String why = calls
                ? "Calls for heat when colder; the gap spares the motor."
                : "Runs when hotter; the gap spares the motor.";
        if (pump && HotLimits.wrongWayRound(t)) why = WRONG;
        add(name + ": " + number(t.sensor()), onOff(t), why);
    }

    private String onOff(Switch.Thermostat t) {
        return "on at " + as.setting(t.on()) + ", off at " + as.setting(t.off());
    }

    private String difference(double kelvin) {
        return Numbers.bare(as.differenceNumber(kelvin), 1) + " " + as.differenceUnit();
    }

    private static String hour(double seconds) {
        long minutes = Math.round(seconds / 60);
        String m = String.valueOf(minutes % 60);
        return minutes / 60 + ":" + (m.length() < 2 ? "0" : "") + m;
    }

    private void floors() {
        for (Emitter e : rig.emitters()) {
            if (e instanceof Emitter.FloorLoop f && f.mixed())
                add(
                        Plain.name(f.name(), 20) + ": mixing valve",
                        as.setting(f.mixedTo()),
                        "Screed bears " + as.hot(HotLimits.SCREED)
                                + ", feet less. A second thermostat behind it stops the pump.");
        }
    }

    private void water() {
        if (rig.loop().pump() != null) {
            add(
                    "second thermostat, own sensor: pump",
                    "on at " + as.hot(HotLimits.second(rig)),
                    "One sensor must not be all that stands before steam.");
        }
        add(
                "hot alarm, last pickup's outlet",
                "rings at " + as.hot(HotLimits.alarm(rig)),
                "Water boils here at " + as.hot(HotLimits.boiling(rig))
                        + ": it must be heard before. Then shut the air.");
        Safety safety = rig.safety();
        double air = Atmosphere.pressure(rig.place().altitude());
        if (safety.relief() != null) {
            add(
                    "relief valve",
                    "opens at " + sizes.pressure(safety.relief().opens()),
                    "Stamped by its maker and never reset; water at that pressure boils at "
                            + as.hot(Water.saturationTemperature(
                                    air + safety.relief().opens())) + ".");
        }
        if (safety.vessel() != null) {
            add(
                    "expansion vessel",
                    "gas " + sizes.pressure(safety.vessel().precharge()) + ", filled cold to "
                            + sizes.pressure(safety.vessel().fill()),
                    "Takes the growth of the water. Set the gas with the water let out.");
        }
        if (safety.discharge() != null) {
            add(
                    "thermal discharge valve",
                    "opens at " + as.setting(safety.discharge().opens()),
                    "Cools the loop with mains water, with no power.");
        }
        Night.Charge c = facts.drills().day().charge();
        if (c != null) {
            add(
                    "store counts as full at",
                    as.hot(c.full()) + " mean",
                    "Hotter, there is no room for what is in the stove.");
        }
    }

    private void fire() {
        double skip = rig.habit() instanceof Habit.Clock c ? c.skipAbove() : ((Habit.Rule) rig.habit()).skipAbove();
        if (!Double.isNaN(skip)) {
            add("no more wood: store's top over", as.setting(skip), "Leaves room for the heat still in the stove.");
        }
        Stove.Air air = rig.stove().air();
        if (air instanceof Stove.Air.Hand h) {
            add(
                    "air",
                    Numbers.percent(h.burning()) + " open burning, " + Numbers.percent(h.banked()) + " on coals",
                    "Ring a timer at 8 minutes whenever it is open to light.");
        } else if (air instanceof Stove.Air.Damper d) {
            add(
                    "damper",
                    "holds " + as.setting(d.setpoint()),
                    "Shuts the air as the stove grows hot; try that it falls shut when warm.");
        }
    }
}
