package stokewell.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Consumer;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.loop.PickupWater;
import stokewell.matter.Water;
import stokewell.network.Compiler;
import stokewell.network.Driven;
import stokewell.network.Plant;
import stokewell.rig.Emitter;
import stokewell.rig.Habit;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Stove;
import stokewell.rig.Switch;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * Runs drills: settles the rig, lives through a normal day, finds its worst moments, and lets one thing fail there.
 *
 * <p>The worst moment is searched for: the moments of least minutes to boil, most heat into water, hottest store, hottest
 * pickup and largest bed are each tried with the power cut, and the one that boils soonest (or, where none boils, grows
 * hottest) is where every fault begins.
 */
public final class Drills {

    /** What a day and its drills came to. @param day the normal day @param drills one a fault, in the faults' order */
    public record Outcome(Night day, List<Drill> drills) {
        public Outcome {
            drills = List.copyOf(drills);
        }

        /** The drill of a fault, or null if it was not run. */
        public Drill of(Fault fault) {
            for (Drill d : drills) if (d.fault() == fault) return d;
            return null;
        }
    }

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double STOPPED = 1e9;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 86400;
    /** A drill needs no more than this, K in a step. */
    private static final double TOLERANCE = 2e-2;
    /** Between looks at the trace for the worst moment, s. */
    private static final double LOOK = 120;
    /** How long a moment is tried when the worst is looked for, s. */
    private static final double TRIAL = 1.5 * HOUR;
    /** Steps in which a thermal discharge valve takes its heat, s. */
    private static final double SPLIT = 5;
    /** How long a cold rig is followed, s. */
    private static final double COLD_SPELL = 14 * DAY;
    /** No thermostat reaches this, K. */
    private static final double OUT_OF_REACH = 699;

    private static final Habit NO_MORE_WOOD = new Habit.Clock(List.of(), Double.NaN);
    private static final Stove.Air WIDE_OPEN = new Stove.Air.Hand(1, 1);

    private final Rig rig;
    private final Weather weather;
    private final double secondOfDay;
    private final double end;
    private final Simulation plain;
    private final Simulation worst;
    private double worstTime;

    private Drills(Rig rig, Weather weather) {
        this.rig = rig;
        this.weather = weather;
        secondOfDay = weather.start().toLocalTime().toSecondOfDay();
        plain = simulation(rig, weather);
        worst = simulation(rig, weather);
        end = weather.repeats() ? NEVER : weather.span();
    }

    /**
     * Runs.
     *
     * @param weather made for {@link Compiler#surfaces} of the rig
     * @param ask     the normal day: it should last a day at least
     */
    public static Outcome run(Rig rig, Weather weather, NightRun.Ask ask, Collection<Fault> faults) {
        return run(rig, weather, ask, faults, NightRun.settled(rig, weather, ask));
    }

    /** Runs from a simulation that stands settled at the start of the day; it is used up. */
    public static Outcome run(
            Rig rig, Weather weather, NightRun.Ask ask, Collection<Fault> faults, Simulation settled) {
        return run(rig, weather, ask, faults, settled, drill -> {});
    }

    /** As above. @param told each drill as it ends; what it throws ends the run */
    public static Outcome run(
            Rig rig,
            Weather weather,
            NightRun.Ask ask,
            Collection<Fault> faults,
            Simulation settled,
            Consumer<Drill> told) {
        Drills drills = new Drills(rig, weather);
        double from = settled.time();
        Simulation day = drills.simulation(rig, weather);
        day.take(settled, from);
        NightRun.Ask fine = new NightRun.Ask(
                ask.from(), ask.until(), ask.hour(), ask.evening(), ask.limit(), LOOK, ask.tolerance());
        Night night = NightRun.record(day, weather, fine, "settled: the normal day");
        drills.findWorst(settled, night);
        List<Drill> list = new ArrayList<>();
        for (Fault f : faults.isEmpty() ? EnumSet.noneOf(Fault.class) : EnumSet.copyOf(faults)) {
            Drill drill = drills.drill(f);
            list.add(drill);
            told.accept(drill);
        }
        return new Outcome(night, list);
    }

    private Simulation simulation(Rig variant, Weather air) {
        return new Simulation(Compiler.compile(variant, air), secondOfDay, TOLERANCE);
    }

    private void findWorst(Simulation day, Night night) {
        double longest = NEVER;
        double hottest = 0;
        for (double t : Moments.of(night)) {
            day.run(t);
            Watch w = wet() ? powerOut(plain, day, t, TRIAL, true) : null;
            boolean worse = w == null
                    || w.firstBoil() < longest
                    || longest == NEVER && w.firstBoil() == NEVER && w.hottestWater > hottest;
            if (!worse) continue;
            if (w != null) {
                longest = w.firstBoil();
                hottest = Math.max(hottest, w.hottestWater);
            }
            worst.take(day, t);
            worstTime = t;
        }
    }

    private boolean wet() {
        return rig.loop() != null;
    }

    /** A simulation of a rig that stands at the worst moment, with nothing tampered with. */
    private Simulation fork(Rig variant) {
        return stand(variant == rig ? plain : simulation(variant, weather));
    }

    private Simulation stand(Simulation sim) {
        return stand(sim, worst, worstTime);
    }

    private static Simulation stand(Simulation sim, Simulation from, double t) {
        sim.watch(null);
        for (Circuit c : sim.plant().circuits()) c.resist(1);
        sim.take(from, t);
        return sim;
    }

    private Drill drill(Fault fault) {
        if (!wet() && fault != Fault.OVER_FIRE && fault != Fault.DOUBLE_LOAD && fault != Fault.BACKDRAFT) {
            return Drill.impossible(fault, "This rig has no water.");
        }
        boolean pump = wet() && rig.loop().pump() != null;
        return switch (fault) {
            case POWER_OUT -> powerOut();
            case PUMP_DEAD -> pump ? pumpDead() : noPump(fault);
            case AIR_LOCK, VALVE_SHUT -> told(fault, follow(resisted(fork(rig)), 8 * HOUR, false), List.of());
            case FAN_DEAD -> fanDead();
            case SENSOR_OUT -> pump ? switched(fault, Drills::sensorOut) : noPump(fault);
            case STUCK_ON -> pump ? stuckOn() : noPump(fault);
            case STUCK_OFF -> pump ? switched(fault, Drills::stuckOff) : noPump(fault);
            case OVER_FIRE -> told(fault, follow(greatestFire(), 6 * HOUR, false), List.of());
            case DOUBLE_LOAD -> doubleLoad();
            case LOW_WATER -> lowWater();
            case DRY_REFILLED -> dryRefilled();
            case FROZEN_RUN -> frozenRun();
            case VENT_BLOCKED -> {
                Simulation sim = fork(rig);
                stopPump(sim);
                yield told(fault, follow(sim, 8 * HOUR, false), List.of());
            }
            case RELIEF_FAILS -> {
                Simulation sim = greatestFire();
                stopPump(sim);
                yield told(fault, follow(sim, 6 * HOUR, false), List.of());
            }
            case BACKDRAFT -> backdraft();
        };
    }

    private static Drill noPump(Fault fault) {
        return Drill.impossible(fault, "This rig has no pump: it circulates by itself.");
    }

    // ---------------------------------------------------------------- the faults

    private Drill powerOut() {
        Rig quiet = rig.fired(NO_MORE_WOOD, rig.stove().air());
        Simulation sim = simulation(quiet, weather);
        Watch with = powerOut(sim, worst, worstTime, 8 * HOUR, true);
        List<Drill.Guard> guards = new ArrayList<>();
        if (rig.safety().battery() != null && rig.loop().pump() != null) {
            guards.add(guard("battery for the pump", powerOut(sim, worst, worstTime, 8 * HOUR, false), with));
        }
        if (canSiphon(with)) {
            Simulation stopped = stand(sim);
            resisted(stopped);
            guards.add(guard("gravity circulation", follow(cutOff(stopped, true), 8 * HOUR, true), with));
        }
        for (Emitter e : rig.emitters()) {
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null || c.pump() != null) continue;
            Simulation without = stand(sim);
            circuit(without, e).resist(STOPPED);
            guards.add(guard(e.name() + " by gravity", follow(cutOff(without, true), 8 * HOUR, true), with));
        }
        if (passiveDischarge()) {
            guards.add(guard("thermal discharge valve", undischarged(cutOff(stand(sim), true), 8 * HOUR), with));
        }
        return told(Fault.POWER_OUT, with, guards);
    }

    private boolean canSiphon(Watch with) {
        return with.siphon > 1e-3;
    }

    private Watch powerOut(Simulation sim, Simulation from, double t, double length, boolean battery) {
        stand(sim, from, t);
        Safety.Battery b = rig.safety().battery();
        if (battery && b != null && rig.loop().pump() != null) {
            for (Driven d : sim.plant().driven()) if (!d.name().equals("pump")) sim.force(d.name(), false);
            double lasts = b.gives() / rig.loop().pump().power();
            Follow follow = new Follow(sim, length);
            follow.until(Math.min(length, lasts));
            stopPump(sim);
            return follow.out(true);
        }
        return follow(cutOff(sim, true), length, true);
    }

    private static Simulation cutOff(Simulation sim, boolean fans) {
        for (Driven d : sim.plant().driven()) if (fans && !d.name().equals("pump")) sim.force(d.name(), false);
        stopPump(sim);
        return sim;
    }

    /** Stops the pump. Steam that lifts water through a check valve is nothing to count on: with one, the loop stands. */
    private static void stopPump(Simulation sim) {
        if (!Double.isNaN(sim.plant().rig().loop().checkValve()))
            sim.plant().loop().resist(STOPPED);
        sim.force("pump", false);
    }

    private Drill pumpDead() {
        Simulation sim = cutOff(fork(rig), false);
        Watch with = follow(sim, 8 * HOUR, false);
        List<Drill.Guard> guards = new ArrayList<>();
        if (rig.switches().stream().anyMatch(s -> !s.drives().equals("pump") && s.highLimit() != null)) {
            Rig without = rig.switched(rig.switches().stream()
                    .map(s -> s.drives().equals("pump") ? s : withHighLimit(s, reached(s.highLimit())))
                    .toList());
            guards.add(guard(
                    "high limit that starts the fan", follow(cutOff(fork(without), false), 8 * HOUR, false), with));
        }
        if (canSiphon(with)) {
            Watch still = follow(resisted(cutOff(fork(rig), false)), 8 * HOUR, false);
            guards.add(guard("gravity circulation", still, with));
        }
        return told(Fault.PUMP_DEAD, with, guards);
    }

    private Simulation resisted(Simulation sim) {
        sim.plant().loop().resist(STOPPED);
        sim.intervene(y -> {});
        return sim;
    }

    private static Circuit circuit(Simulation sim, Emitter emitter) {
        for (Driven d : sim.plant().driven()) if (d.name().equals(emitter.name())) return d.circuit();
        throw new IllegalStateException("no circuit of " + emitter.name());
    }

    private Drill fanDead() {
        if (rig.emitters().isEmpty()) return Drill.impossible(Fault.FAN_DEAD, "This rig has no fan.");
        Simulation sim = fork(rig);
        for (Emitter e : rig.emitters()) sim.force(e.name(), false);
        return told(Fault.FAN_DEAD, follow(sim, DAY, false, true), List.of());
    }

    private Drill stuckOn() {
        Simulation sim = fork(rig);
        sim.force("pump", true);
        return told(Fault.STUCK_ON, follow(sim, 16 * HOUR, false, true), List.of());
    }

    private interface Rewire {
        Switch of(Switch s);
    }

    /** A fault of the pump's own switch; what its high limit is worth is told beside it. */
    private Drill switched(Fault fault, Rewire rewire) {
        List<Switch> list = new ArrayList<>();
        boolean any = false;
        boolean limit = false;
        for (Switch s : rig.switches()) {
            Switch other = s.drives().equals("pump") ? rewire.of(s) : s;
            any |= other != s;
            limit |= s.drives().equals("pump") && s.highLimit() != null;
            list.add(other);
        }
        if (!any) return Drill.impossible(fault, "No thermostat drives the pump.");
        Simulation sim = fork(rig.switched(list));
        Follow follow = new Follow(sim, 8 * HOUR);
        // the sensor forgets slowly; once the pump stands for good, the loop stands with it
        for (int k = 1; k <= 40 && !limit && sim.plant().loop().pumping(); k++) follow.until(30.0 * k);
        if (!limit && !sim.plant().loop().pumping()) stopPump(sim);
        Watch with = follow.out(false);
        List<Drill.Guard> guards = new ArrayList<>();
        if (limit) {
            List<Switch> bare = list.stream()
                    .map(s -> s.drives().equals("pump") ? withHighLimit(s, reached(s.highLimit())) : s)
                    .toList();
            guards.add(guard("high limit of the pump", follow(fork(rig.switched(bare)), 8 * HOUR, false), with));
        }
        return told(fault, with, guards);
    }

    private static Switch.Thermostat reached(Switch.Thermostat t) {
        return t == null ? null : new Switch.Thermostat(t.sensor(), OUT_OF_REACH, OUT_OF_REACH - 1);
    }

    private static Switch withHighLimit(Switch s, Switch.Thermostat limit) {
        return new Switch(s.drives(), s.thermostat(), s.differential(), s.lowLimit(), limit, s.hours());
    }

    private static Switch.Sensor inTheRoom(Switch.Sensor s) {
        return new Switch.Sensor(Switch.Spot.ROOM, s.height(), "", s.lag());
    }

    private static Switch sensorOut(Switch s) {
        if (s.thermostat() != null) {
            Switch.Thermostat t = s.thermostat();
            Switch.Thermostat out = new Switch.Thermostat(inTheRoom(t.sensor()), t.on(), t.off());
            return new Switch(s.drives(), out, s.differential(), s.lowLimit(), s.highLimit(), s.hours());
        }
        if (s.differential() != null) {
            Switch.Differential d = s.differential();
            Switch.Differential out = new Switch.Differential(inTheRoom(d.hot()), d.cold(), d.on(), d.off());
            return new Switch(s.drives(), null, out, s.lowLimit(), s.highLimit(), s.hours());
        }
        return s;
    }

    private static Switch stuckOff(Switch s) {
        if (s.thermostat() != null) {
            return new Switch(
                    s.drives(), reached(s.thermostat()), s.differential(), s.lowLimit(), s.highLimit(), s.hours());
        }
        if (s.differential() != null) {
            Switch.Differential d = s.differential();
            Switch.Differential out = new Switch.Differential(d.hot(), d.cold(), 100, 99);
            return new Switch(s.drives(), null, out, s.lowLimit(), s.highLimit(), s.hours());
        }
        return s;
    }

    /** Weight of the largest load, kg. */
    private double load() {
        return rig.habit() instanceof Habit.Rule r
                ? r.mass()
                : ((Habit.Clock) rig.habit())
                        .loads().stream().mapToDouble(Habit.Load::mass).max().orElse(0);
    }

    /** The bed filled up to a whole fresh load, and the air wide open. */
    private Simulation greatestFire() {
        return fill(fork(rig.fired(rig.habit(), WIDE_OPEN)));
    }

    private Simulation fill(Simulation sim) {
        Plant plant = sim.plant();
        double more = Math.max(0, load() - plant.fire().bed(sim.columns()));
        sim.intervene(y -> y[Plant.state(plant.raw())] += more);
        return sim;
    }

    private Drill doubleLoad() {
        Simulation sim = fork(rig);
        double mass = load();
        int raw = Plant.state(sim.plant().raw());
        sim.intervene(y -> y[raw] += mass);
        return told(Fault.DOUBLE_LOAD, follow(sim, 8 * HOUR, false), List.of());
    }

    private Drill lowWater() {
        Simulation sim = resisted(fork(rig));
        int header = Plant.state(sim.plant().header());
        sim.intervene(y -> y[header] = 0);
        return told(Fault.LOW_WATER, follow(sim, 8 * HOUR, false), List.of());
    }

    private Drill dryRefilled() {
        Simulation sim = resisted(fork(rig));
        Plant plant = sim.plant();
        sim.intervene(y -> {
            y[Plant.state(plant.header())] = 0;
            for (int w : plant.wet()) y[Plant.state(w)] = 0;
        });
        Watch w = follow(sim, 2 * HOUR, false);
        return told(Fault.DRY_REFILLED, w, List.of());
    }

    private Drill frozenRun() {
        Simulation cold = cutOff(fork(rig.fired(NO_MORE_WOOD, rig.stove().air())), true);
        Watch frozen = follow(cold, COLD_SPELL, false, true);
        Simulation lit = fill(resisted(fork(rig)));
        Plant plant = lit.plant();
        lit.intervene(y -> {
            for (PickupWater p : plant.pickups()) {
                y[Plant.state(p.water())] = 273.15;
                y[Plant.state(p.wall())] = 273.15;
            }
        });
        Watch fire = follow(lit, 3 * HOUR, false);
        fire.coldSpell = frozen.lasted;
        fire.freezing = frozen.freezing;
        fire.frozenWhere = frozen.frozenWhere;
        fire.roomLowest = frozen.roomLowest;
        return told(Fault.FROZEN_RUN, fire, List.of());
    }

    private Drill backdraft() {
        Site site = new Site(
                rig.place().latitude(),
                rig.place().longitude(),
                rig.place().utcOffset(),
                rig.place().altitude());
        double warm = 293.15;
        Weather mild = Weather.day(
                new DayRange(warm - 1, warm + 3), 0, 0, site, LocalDate.of(2023, 5, 1), Compiler.surfaces(rig));
        Simulation sim = simulation(rig.fired(NO_MORE_WOOD, rig.stove().air()), mild);
        stand(sim, worst, worstTime);
        Plant plant = sim.plant();
        sim.intervene(y -> {
            y[Plant.state(plant.raw())] = 0;
            y[Plant.state(plant.fuelWater())] = 0;
            y[Plant.state(plant.volatiles())] = 0;
            y[Plant.state(plant.carbon())] = Math.max(0.3, y[Plant.state(plant.carbon())]);
            for (int piece : plant.chimney()) y[Plant.state(piece)] = warm - 2;
            y[Plant.state(plant.body())] = Math.min(y[Plant.state(plant.body())], warm + 30);
        });
        return told(Fault.BACKDRAFT, follow(sim, HOUR, true), List.of());
    }

    // ---------------------------------------------------------------- following a run

    private Watch follow(Simulation sim, double length, boolean tillAshes) {
        return follow(sim, length, tillAshes, false);
    }

    /** Follows a run for a time, or until its fire is out and nothing grows hotter. */
    private Watch follow(Simulation sim, double length, boolean tillAshes, boolean whole) {
        Follow follow = new Follow(sim, length);
        if (whole) {
            follow.until(length);
            return follow.watch;
        }
        return follow.out(tillAshes);
    }

    private Watch undischarged(Simulation sim, double length) {
        Follow follow = new Follow(sim, length);
        follow.discharge = null;
        return follow.out(true);
    }

    private boolean passiveDischarge() {
        Safety.Discharge d = rig.safety().discharge();
        return d != null && Boolean.TRUE.equals(d.withoutPower());
    }

    /** One run being followed. */
    private final class Follow {
        private final Simulation sim;
        private final Watch watch;
        private final double start;
        private final double length;
        private Safety.Discharge discharge;

        Follow(Simulation sim, double length) {
            this.sim = sim;
            start = sim.time();
            this.length = Math.min(length, end - start - 1);
            watch = new Watch(sim.plant(), start);
            sim.watch(watch::step);
            discharge = passiveDischarge() ? rig.safety().discharge() : null;
        }

        void until(double after) {
            double stop = start + Math.min(after, length);
            if (discharge == null) {
                sim.run(stop);
            } else {
                while (sim.time() < stop - 1e-6) {
                    double hot = hottestPickup();
                    boolean open = hot > discharge.opens();
                    boolean near = hot > discharge.opens() - 15;
                    sim.run(Math.min(stop, sim.time() + (open ? SPLIT : near ? 2 * SPLIT : 2 * MINUTE)));
                    if (open) takeHeat(SPLIT);
                }
            }
            watch.lasted = sim.time() - start;
        }

        private double hottestPickup() {
            double[] x = sim.columns();
            double hot = 0;
            for (PickupWater p : sim.plant().pickups()) hot = Math.max(hot, x[p.water()]);
            return hot;
        }

        private void takeHeat(double seconds) {
            List<PickupWater> pickups = sim.plant().pickups();
            double each = discharge.power() * seconds / pickups.size();
            sim.intervene(y -> {
                for (PickupWater p : pickups) {
                    int i = p.water() - Wiring.OUTSIDE;
                    double floor = discharge.opens() - 8;
                    double down = each / sim.plant().network().capacity(i);
                    if (y[i] > floor) y[i] = Math.max(floor, y[i] - down);
                }
            });
        }

        /** Goes on until the fire is out or the time is over. */
        Watch out(boolean tillAshes) {
            double after = sim.time() - start;
            while (after < length - 1) {
                after = Math.min(length, after + 20 * MINUTE);
                until(after);
                boolean quiet = after - watch.hottestWaterAfter > 15 * MINUTE;
                boolean down = watch.bed < (tillAshes ? 0.1 : 0.5);
                if (down && quiet && after > 40 * MINUTE) break;
                // bare metal at its hottest tells no more
                if (watch.exposed < after - HOUR) break;
            }
            watch.lasted = sim.time() - start;
            return watch;
        }
    }

    private static Drill.Guard guard(String name, Watch without, Watch with) {
        return new Drill.Guard(
                name, without.firstBoil(), with.firstBoil(), Math.max(0, without.waterLost - with.waterLost));
    }

    private Drill told(Fault fault, Watch w, List<Drill.Guard> guards) {
        return new Telling(rig, fault, w, worstTime, guards).drill();
    }

    /** The height of water over the lowest pickup, Pa. */
    static double head(Rig rig) {
        if (rig.loop() == null) return 0;
        double lowest =
                rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        return Water.density(283.15) * 9.80665 * Math.max(0, rig.loop().header().level() - lowest);
    }
}
