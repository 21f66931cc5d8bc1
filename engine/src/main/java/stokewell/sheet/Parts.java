package stokewell.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.check.HeaderRules;
import stokewell.loop.PipeSize;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Materials;
import stokewell.rig.Metal;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Switch;

/**
 * What to buy, counted: pipe by size, lagging, fittings, sensors.
 *
 * @param pipes    by size, widest first
 * @param lagging  by size
 * @param fittings everything that is counted in pieces
 * @param sensors  each place once
 * @param header   room that the header must have, as the check asks, m³; NaN without one
 * @param vent     length of the open vent, about, m; NaN without one
 */
public record Parts(
        List<Run> pipes,
        List<Lagging> lagging,
        List<Fitting> fittings,
        List<Switch.Sensor> sensors,
        double header,
        double vent) {

    /**
     * All pipe of one size.
     *
     * @param sold    the nearest that is sold and not much narrower; null where none is
     * @param guessed whether the rig file does not say what it is made of
     */
    public record Run(double bore, double wall, double length, int elbows, PipeSize sold, boolean guessed) {}

    /** All lagging of one size: pipe outside and thickness, m. */
    public record Lagging(double outside, double thickness, double length) {}

    /** So many of a thing, and where it goes or why. */
    public record Fitting(String what, int count, String why) {}

    public Parts {
        pipes = List.copyOf(pipes);
        lagging = List.copyOf(lagging);
        fittings = List.copyOf(fittings);
        sensors = List.copyOf(sensors);
    }

    /** Counts. */
    public static Parts of(Rig rig) {
        List<Pipe> all = pipes(rig);
        return new Parts(
                runs(all, rig.safety().materials()), lagging(all), fittings(rig), sensors(rig), header(rig), vent(rig));
    }

    private static List<Pipe> pipes(Rig rig) {
        List<Pipe> all = new ArrayList<>();
        if (rig.loop() != null) {
            all.add(rig.loop().supply());
            all.add(rig.loop().back());
        }
        for (Emitter e : rig.emitters()) {
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null) continue;
            all.add(c.supply());
            all.add(c.back());
        }
        return all;
    }

    private static List<Run> runs(List<Pipe> all, Materials materials) {
        Metal metal = materials == null ? null : materials.pipe();
        List<Run> runs = new ArrayList<>();
        for (Pipe p : all) {
            int at = 0;
            while (at < runs.size() && !(runs.get(at).bore == p.bore() && runs.get(at).wall == p.wall())) at++;
            Run had = at < runs.size() ? runs.remove(at) : null;
            double length = p.length() + (had == null ? 0 : had.length);
            int elbows = p.elbows() + (had == null ? 0 : had.elbows);
            runs.add(new Run(p.bore(), p.wall(), length, elbows, sold(p.bore(), material(metal)), metal == null));
        }
        runs.sort(Comparator.comparingDouble(Run::bore).reversed());
        return runs;
    }

    private static PipeSize.Material material(Metal metal) {
        if (metal == null) return PipeSize.Material.STEEL;
        return switch (metal) {
            case STEEL -> PipeSize.Material.STEEL;
            case STAINLESS -> PipeSize.Material.STAINLESS;
            case COPPER -> PipeSize.Material.COPPER;
            case GALVANISED -> PipeSize.Material.GALVANIZED;
            case PLASTIC, RUBBER -> PipeSize.Material.PEX;
        };
    }

    /** The size that is sold whose bore is nearest, and at most a twentieth narrower; null where none is. */
    static PipeSize sold(double bore, PipeSize.Material material) {
        PipeSize best = null;
        for (PipeSize p : PipeSize.all()) {
            if (p.material() != material || p.inner() < 0.95 * bore) continue;
            // a heavy wall is for who named it
            if (p.heavy() && Math.abs(p.inner() - bore) > 1e-4) continue;
            if (best == null || Math.abs(p.inner() - bore) < Math.abs(best.inner() - bore)) best = p;
        }
        return best != null && best.inner() < 1.25 * bore ? best : null;
    }

    private static List<Lagging> lagging(List<Pipe> all) {
        List<Lagging> list = new ArrayList<>();
        for (Pipe p : all) {
            if (p.insulation() <= 0) continue;
            double outside = p.bore() + 2 * p.wall();
            int at = 0;
            while (at < list.size() && !(list.get(at).outside == outside && list.get(at).thickness == p.insulation()))
                at++;
            double had = at < list.size() ? list.remove(at).length : 0;
            list.add(new Lagging(outside, p.insulation(), had + p.length()));
        }
        return list;
    }

    private static List<Fitting> fittings(Rig rig) {
        List<Fitting> list = new ArrayList<>();
        int pumps = 0;
        int checks = 0;
        int circuits = 0;
        int fans = 0;
        if (rig.loop() != null) {
            if (rig.loop().pump() != null) pumps++;
            if (!Double.isNaN(rig.loop().checkValve())) checks++;
        }
        for (Emitter e : rig.emitters()) {
            if (e instanceof Emitter.AirTubes || e instanceof Emitter.FanCoil) fans++;
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null) continue;
            circuits++;
            if (c.pump() != null) pumps++;
            if (!Double.isNaN(c.checkValve())) checks++;
            if (e instanceof Emitter.FloorLoop f && f.mixed())
                list.add(new Fitting(
                        "mixing valve", 1, f.name() + ": before its pump, cool water from behind the floor"));
        }
        if (pumps > 0) {
            list.add(new Fitting("union", 2 * pumps, "one on each side of a pump; pumps sit low"));
        }
        if (fans > 0) list.add(new Fitting("air filter", fans, "before the fan, never after"));
        if (checks > 0)
            list.add(new Fitting("check valve", checks, "swing flap; free to open by itself in the safe direction"));
        if (rig.loop() != null) {
            safety(list, rig.safety());
            list.add(new Fitting("drain cock", 1 + circuits, "at the lowest point of loop and circuits"));
            list.add(new Fitting(
                    "air bleed",
                    1 + circuits,
                    rig.safety().closed()
                            ? "at every high point"
                            : "at every high point that does not rise to the vent"));
            list.add(new Fitting("hot alarm", 1, "loud, with a battery of its own, on the last pickup's outlet"));
            list.add(new Fitting("thermometer", 3, "last pickup's outlet, top of the store, bottom of the store"));
        }
        list.add(new Fitting("carbon monoxide alarm", 1, "where its own sheet says"));
        if (pumps + fans > 0) list.add(new Fitting("residual-current breaker", 1, "feeds pumps and fans"));
        return list;
    }

    private static void safety(List<Fitting> list, Safety safety) {
        if (safety.relief() != null) {
            list.add(new Fitting("relief valve", 1, "at the stove, nothing that shuts before or after it"));
        }
        if (safety.vessel() != null) list.add(new Fitting("expansion vessel", 1, "on the cool pipe"));
        if (safety.discharge() != null)
            list.add(new Fitting("thermal discharge valve", 1, "its sensor on the hottest water"));
        if (safety.battery() != null) list.add(new Fitting("battery with inverter", 1, "keeps the pump running"));
        if (safety.tap() != null) list.add(new Fitting("mixing valve", 1, "before the hot tap"));
    }

    private static List<Switch.Sensor> sensors(Rig rig) {
        List<Switch.Sensor> all = new ArrayList<>();
        for (Switch s : rig.switches()) {
            if (s.differential() != null) {
                add(all, s.differential().hot());
                add(all, s.differential().cold());
            }
            for (Switch.Thermostat t : new Switch.Thermostat[] {s.thermostat(), s.lowLimit(), s.highLimit()}) {
                if (t != null) add(all, t.sensor());
            }
        }
        return all;
    }

    private static void add(List<Switch.Sensor> all, Switch.Sensor s) {
        for (Switch.Sensor o : all) {
            boolean height = s.at() != Switch.Spot.STORE || o.height() == s.height();
            boolean which = s.at() != Switch.Spot.PICKUP || o.of().equals(s.of());
            if (o.at() == s.at() && height && which) return;
        }
        all.add(s);
    }

    private static double header(Rig rig) {
        if (rig.loop() == null || rig.safety().closed()) return Double.NaN;
        return HeaderRules.holds(rig);
    }

    private static double vent(Rig rig) {
        if (rig.loop() == null || rig.safety().closed()) return Double.NaN;
        double highest =
                rig.pickups().stream().mapToDouble(p -> p.elevation()).max().orElse(0);
        return Math.max(0, rig.loop().header().level() + rise(rig) - highest);
    }

    /** Rise of the vent's end over the header's water: what the rig file says, or what practice asks. */
    public static double rise(Rig rig) {
        Safety.OpenVent v = rig.safety().vent();
        return v == null || Double.isNaN(v.rise()) ? HeaderRules.ventRise(rig) : v.rise();
    }
}
