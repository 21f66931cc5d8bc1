package stokewell.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.matter.Water;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** Makes a drill of what was watched: the loads on vent and relief, how bad it is; {@link Sentence} words it. */
final class Telling {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double K = 273.15;
    private static final double COLD_WATER = 283.15;
    /** No home-made loop is counted on to hold this over the air, Pa. */
    private static final double BURSTS = 6e5;

    private final Rig rig;
    private final Fault fault;
    private final Watch w;
    private final double start;
    private final List<Drill.Guard> guards;
    private final double air;
    private final double head;
    private final Drill.Flashed flash;
    private String said = "";

    Telling(Rig rig, Fault fault, Watch w, double start, List<Drill.Guard> guards) {
        this.rig = rig;
        this.fault = fault;
        this.w = w;
        this.start = start;
        this.guards = guards;
        air = w.airPressure();
        head = Pressure.head(rig);
        flash = fault == Fault.DRY_REFILLED ? flashed() : null;
    }

    /** What happened, where the fault itself can say it better. */
    Telling saying(String what) {
        said = what;
        return this;
    }

    Drill drill() {
        double latent = Water.latentHeat(Water.saturationTemperature(air + head));
        boolean boils = w.firstBoil() < NEVER;
        double steamPower = w.steamRate * latent;
        double needed = boils ? Math.max(steamPower, sealed() ? w.heat : w.heatAtBoiling) : 0;
        if (fault == Fault.RELIEF_FAILS && rig.safety().closed()) needed = Math.max(needed, w.heat);
        double fitted = rig.loop() == null ? Double.NaN : fitted();
        double pressure = rig.loop() == null ? Double.NaN : pressure(needed, boils);
        List<Drill.Guard> all = new ArrayList<>();
        if (boils) outlets(all, needed, pressure);
        all.addAll(guards);
        Level level = Severity.of(rig, fault, w, needed, fitted, pressure);
        List<Drill.Boils> list = new ArrayList<>();
        for (int i = 0; i < w.boils.length; i++) {
            list.add(new Drill.Boils(rig.pickups().get(i).name(), w.boils[i]));
        }
        return new Drill(
                fault,
                true,
                start,
                w.lasted,
                list,
                hottest(w.hottestWater, w.hottestWaterWhere, w.hottestWaterAfter),
                hottest(w.hottestMetal, w.hottestMetalWhere, w.hottestMetalAfter),
                pressure,
                w.steamRate,
                steamPower,
                w.heat,
                needed,
                fitted,
                w.waterLost,
                w.exposed,
                w.freezing,
                w.roomLowest,
                w.roomHighest,
                w.stove,
                w.storeTop > 0 ? w.storeTop : Double.NaN,
                w.draft,
                w.drawn,
                flash,
                w.course(),
                all,
                level,
                new Sentence(rig, fault, w, head, flash, said).of(boils, needed, fitted, pressure));
    }

    private static Drill.Hottest hottest(double temperature, String where, double after) {
        return temperature > 0
                ? new Drill.Hottest(temperature, where, after)
                : new Drill.Hottest(Double.NaN, "", Double.NaN);
    }

    /** Whether this fault shuts the coil off from its vent, or may. */
    private boolean sealed() {
        return switch (fault) {
            case VENT_BLOCKED -> !rig.safety().closed();
            case FROZEN_RUN -> w.freezing < NEVER;
            case VALVE_SHUT -> !Boolean.FALSE.equals(rig.safety().valveToOpen());
            default -> false;
        };
    }

    private boolean reliefReached() {
        Safety.ReliefValve r = rig.safety().relief();
        if (r == null) return false;
        // behind a shut valve or an ice plug only a relief at the stove itself counts
        boolean cutOff = fault == Fault.VALVE_SHUT || fault == Fault.FROZEN_RUN;
        if (!cutOff) return !Boolean.TRUE.equals(rig.safety().valveToOpen());
        return Boolean.TRUE.equals(r.atStove())
                && !Boolean.TRUE.equals(rig.safety().valveToOpen());
    }

    private double fitted() {
        if (fault == Fault.VENT_NARROW) {
            double latent = Water.latentHeat(Water.saturationTemperature(air));
            double open = Vented.ventSteam(rig.loop().header().vent() / 3, head, air) * latent;
            return open
                    + (rig.safety().relief() == null
                            ? 0
                            : Vented.valve(rig.safety().relief(), air));
        }
        if (sealed()) return reliefReached() ? Vented.valve(rig.safety().relief(), air) : 0;
        return Vented.fitted(rig, air, head, true);
    }

    private double pressure(double needed, boolean boils) {
        if (!rig.safety().closed() && w.choked > 0) return head + w.choked;
        if (sealed()) {
            // water shut in all round bursts its walls as it warms, long before it boils
            if (!boils && fault == Fault.VENT_BLOCKED) return w.gauge;
            if (!reliefReached()) return NEVER;
            return boils ? Vented.valvePressure(rig.safety().relief(), needed, air) : w.gauge;
        }
        if (rig.safety().closed()) {
            boolean held = rig.safety().relief() != null || !boils && w.gauge < BURSTS;
            return held ? w.gauge : NEVER;
        }
        return head + Vented.ventLoss(rig.loop().header().vent(), w.steamRate, air);
    }

    /** The ways out that a drill is about: what the pressure comes to with them, and what it would be without. */
    private void outlets(List<Drill.Guard> all, double needed, double pressure) {
        boolean valve = reliefReached();
        if (fault == Fault.RELIEF_FAILS && !rig.safety().closed()) {
            double behind = valve ? Vented.valvePressure(rig.safety().relief(), needed, air) : NEVER;
            all.add(Guards.outlet("open vent", w, behind, pressure));
        } else if (valve && (fault == Fault.RELIEF_FAILS || fault == Fault.VENT_BLOCKED)) {
            all.add(Guards.outlet("relief valve", w, NEVER, pressure));
        }
    }

    private Drill.Flashed flashed() {
        double mass = 0;
        double area = 0;
        double volume = 0;
        for (Pickup p : rig.pickups()) {
            mass += p.metal();
            area += p.area();
            volume += p.volume();
        }
        double hot = w.hottestMetal;
        Flash f = Flash.of(mass, area, volume, hot, inflow(), COLD_WATER, air);
        return new Drill.Flashed(f.steam(), Flash.most(mass, hot, COLD_WATER, air), f.peak(), f.peakHeat(), f.lasts());
    }

    /** Water that the header lets into an empty coil, kg/s: its head against the narrowest way in and some bends. */
    private double inflow() {
        double drop = Math.max(0.3, head / (1000 * 9.80665));
        double feed =
                rig.safety().vent() == null ? Double.NaN : rig.safety().vent().coldFeed();
        double bore = feed > 0
                ? Math.min(feed, rig.loop().back().bore())
                : rig.loop().back().bore();
        return 1000 * Math.PI / 4 * bore * bore * Math.sqrt(2 * 9.80665 * drop / 5);
    }

    /** A temperature as both kinds of reader read it. */
    static String degrees(double kelvin) {
        return Findings.say("%.0f °C (%.0f °F)", kelvin - K, 1.8 * (kelvin - K) + 32);
    }

    /** When something happens after the fault, in words. */
    static String later(double seconds) {
        return seconds < 1 ? "at once" : span(seconds) + " later";
    }

    /** A length of time in words. */
    static String span(double seconds) {
        if (seconds == NEVER) return "never";
        if (seconds < 90) return Math.round(seconds) + " s";
        if (seconds < 5400) return Math.round(seconds / 60) + " min";
        if (seconds < 48 * 3600) return String.format(Locale.ROOT, "%.1f h", seconds / 3600);
        return String.format(Locale.ROOT, "%.1f days", seconds / 86400);
    }
}
