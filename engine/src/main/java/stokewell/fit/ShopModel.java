package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.rig.Switch;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.solve.StepFailure;
import stokewell.weather.Weather;

/**
 * The rig, replayed through the days of the readings, as the model of a fit: its unknowns are the knobs of the rig, the
 * weight of loads that nobody noted, how warm the floor was at first, and what each sensor reads too much.
 */
public final class ShopModel implements Response {

    /**
     * Readings are averaged over so long, s: a thermostat in the model never cycles in step with the one in the shop, and
     * what is left of that in the slopes would pass for knowledge. Two hours leave what the days tell and take the cycles.
     */
    public static final double BIN = 7200;

    static final double STEP = 300;
    /** What the sensors begin with is not known everywhere: so long is played but not compared, s. */
    public static final double LEAD = 8 * 3600;

    private static final double TOLERANCE = 10 * Simulation.TOLERANCE;
    /** More loads than this that nobody noted share one unknown. */
    private static final int MOST_UNNOTED = 4;

    private final Rig rig;
    private final Weather weather;
    private final Simulation settled;
    private final Readings readings;
    private final List<Burn> burns;
    private final List<Knob> knobs;
    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final List<Spot> extra;
    private final double[] extraTimes;
    private final Observed observed;
    private final List<Stretch> stretches = new ArrayList<>();
    private final Mornings mornings;
    private final List<Replay.Anchor> anchors;
    private final int thermostat;
    private final int unnoted;
    private final int firstUnnoted;
    private final int floor;
    private final int firstOffset;

    /**
     * @param knobs what may be turned
     */
    public ShopModel(
            Rig rig, Weather weather, Simulation settled, Readings readings, List<Burn> burns, List<Knob> knobs) {
        this.rig = rig;
        this.weather = weather;
        this.settled = settled;
        this.readings = readings;
        this.burns = burns;
        this.knobs = List.copyOf(knobs);
        for (Knob k : knobs) {
            double reach = 4 * k.spread;
            unknowns.add(new Unknown(
                    k.name().toLowerCase(java.util.Locale.ROOT), k.words, 0, k.spread, -reach, reach, 0.4 * k.spread));
        }
        firstUnnoted = unknowns.size();
        int free = (int) burns.stream().filter(b -> !b.noted()).count();
        unnoted = free <= MOST_UNNOTED ? free : 1;
        for (int i = 0; i < unnoted; i++) {
            String name = free <= MOST_UNNOTED ? "unnoted " + (i + 1) : "unnoted";
            unknowns.add(new Unknown(name, "weight of wood that nobody noted", 0, 0.6, -2.5, 2, 0.2));
        }
        floor = unknowns.size();
        unknowns.add(
                new Unknown("floor start", "warmth of the floor at the start over the settled one", 0, 2, -8, 8, 1));
        thermostat = unknowns.size();
        unknowns.add(new Unknown(
                "thermostat", "how much warmer the thermostat keeps the room than it says", 0, 0.7, -4, 4, 0.3));
        firstOffset = unknowns.size();
        List<Series> series = new ArrayList<>();
        for (Map.Entry<Spot, Series> e : readings.at().entrySet()) {
            if (!e.getKey().compared() || e.getValue().size() < 8) continue;
            spots.add(e.getKey());
            series.add(e.getValue());
            unknowns.add(new Unknown(
                    e.getKey().words + " offset",
                    "what the sensor at " + e.getKey().words + " reads too much",
                    0,
                    e.getKey().offsetSpread(),
                    -8,
                    8,
                    0));
        }
        observed = observed(series);
        extra = Probing.spotsOf(rig).stream()
                .filter(s -> s.compared() && !spots.contains(s))
                .toList();
        int count = (int) Math.max(0, Math.floor((readings.until() - readings.from() - LEAD) / BIN));
        extraTimes = new double[count];
        for (int i = 0; i < count; i++) extraTimes[i] = readings.from() + LEAD + (i + 0.5) * BIN;
        mornings = new Mornings(
                readings,
                settled.plant().store().length,
                weather.start().toLocalTime().toSecondOfDay(),
                LEAD);
        anchors = mornings.anchors(null);
    }

    private Observed observed(List<Series> series) {
        List<Series> parts = new ArrayList<>();
        List<Observed.Channel> channels = new ArrayList<>();
        for (int c = 0; c < series.size(); c++) {
            int first = parts.size();
            parts.addAll(series.get(c)
                    .between(readings.from() + LEAD, readings.until())
                    .stretches(BIN));
            channels.add(new Observed.Channel(spots.get(c).words, first, parts.size(), 3 * spots.get(c).error, 0.1));
        }
        for (Series part : parts) stretches.add(Stretch.of(part.time(), readings.from(), STEP));
        double[] time = parts.stream()
                .mapToDouble(s -> Arrays.stream(s.time()).average().orElseThrow())
                .toArray();
        return new Observed(time, parts.stream().mapToDouble(Series::mean).toArray(), channels);
    }

    private Stretch about(double middle) {
        double[] times = new double[(int) (BIN / STEP)];
        for (int k = 0; k < times.length; k++) times[k] = middle + (k + 0.5) * STEP - 0.5 * BIN;
        return Stretch.of(times, readings.from(), STEP);
    }

    @Override
    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** What was read, averaged, channel after channel in the order of {@link #spots}. */
    public Observed observed() {
        return observed;
    }

    /** The places that are compared. */
    public List<Spot> spots() {
        return List.copyOf(spots);
    }

    /** Places without a sensor: what one would read there follows behind the rows of those there are, place after place. */
    List<Spot> extra() {
        return extra;
    }

    /** When that is. */
    double[] extraTimes() {
        return extraTimes;
    }

    /** The loads behind the readings. */
    public List<Burn> burns() {
        return burns;
    }

    /** The knobs, in the order of the first unknowns. */
    public List<Knob> knobs() {
        return knobs;
    }

    /** The rig with its knobs turned. */
    public Rig rig(double[] p) {
        Rig turned = rig;
        for (int j = 0; j < knobs.size(); j++) turned = knobs.get(j).turned(turned, Math.exp(p[j]));
        return Altered.of(
                turned,
                "switches",
                (List<Switch> all) ->
                        all.stream().map(w -> shifted(w, p[thermostat])).toList());
    }

    private static Switch shifted(Switch s, double by) {
        boolean room = s.thermostat() != null && s.thermostat().sensor().at() == Switch.Spot.ROOM;
        if (!room || by == 0) return s;
        return Altered.of(
                s, "thermostat", (Switch.Thermostat t) -> new Switch.Thermostat(t.sensor(), t.on() + by, t.off() + by));
    }

    /** The loads with their weights as estimated. */
    public List<Replay.Load> loads(double[] p) {
        return loads(p, null);
    }

    private List<Replay.Load> loads(double[] p, Change change) {
        int wood = knobs.indexOf(Knob.WOOD);
        double noted = wood < 0 ? 1 : Math.exp(p[wood]);
        List<Replay.Load> loads = new ArrayList<>();
        int k = 0;
        for (Burn b : burns) {
            double factor = noted;
            if (!b.noted()) {
                factor *= Math.exp(p[firstUnnoted + (unnoted == 1 ? 0 : k)]);
                k++;
            }
            if (change != null && change.knob() == Knob.WOOD && change.at(b.time())) factor *= Math.exp(change.size());
            loads.add(new Replay.Load(b.time(), factor * b.mass()));
        }
        return loads;
    }

    /** Where a change may begin or end: the mornings at which the rig is set to its sensors. */
    List<Double> mornings() {
        return mornings.times();
    }

    @Override
    public double[] at(double[] p) {
        return at(p, anchors, null);
    }

    /** What would be read had something changed. */
    double[] at(double[] p, Change change) {
        return at(p, change == null || change.knob() != null ? anchors : mornings.anchors(change), change);
    }

    /** As {@link #at(double[])}, never set to the sensors after a time: what a prediction from there would have been. */
    double[] predicted(double[] p, double after) {
        return at(p, anchors.stream().filter(a -> a.time() <= after).toList(), null);
    }

    private double[] at(double[] p, List<Replay.Anchor> some, Change change) {
        List<Spot> all = new ArrayList<>(spots);
        all.addAll(extra);
        Replay.Played played = play(p, rig(p), some, change, Probing.of(all), readings.until());
        if (played == null) return null;
        double[] out = new double[observed.rows() + extra.size() * extraTimes.length];
        int room = spots.indexOf(Spot.ROOM);
        for (int c = 0; c < spots.size(); c++) {
            double[] read = played.read()[c];
            if (change != null && change.cause() instanceof Cause.Drifted d && d.spot() == spots.get(c)) {
                read = seen(read, read, change, 0, change.size());
            } else if (change != null && change.cause() instanceof Cause.Loose l && l.spot() == spots.get(c)) {
                read = seen(read, played.read()[room], change, change.size(), 0);
            }
            Observed.Channel channel = observed.channels().get(c);
            for (int i = channel.from(); i < channel.until(); i++) {
                out[i] = stretches.get(i).of(read) + p[firstOffset + c];
            }
        }
        int at = observed.rows();
        for (int c = 0; c < extra.size(); c++) {
            for (double t : extraTimes) out[at++] = about(t).of(played.read()[spots.size() + c]);
        }
        return out;
    }

    /** What a sensor shows that hangs partly in the room and is off. */
    private double[] seen(double[] read, double[] room, Change change, double share, double off) {
        double[] seen = read.clone();
        for (int k = 0; k < seen.length; k++) {
            if (change.at(readings.from() + k * STEP)) seen[k] += share * (room[k] - seen[k]) + off;
        }
        return seen;
    }

    @Override
    public boolean isDear() {
        return true;
    }

    @Override
    public double[] slope(int j, double[] p) {
        if (j < firstOffset) return null;
        double[] one = new double[observed.rows()];
        Observed.Channel channel = observed.channels().get(j - firstOffset);
        Arrays.fill(one, channel.from(), channel.until(), 1);
        return one;
    }

    /** Plays a rig through the days with nothing but its start given; null where the engine cannot run it. */
    public Replay.Played play(double[] p, Rig turned, Probing.Probes probes, double until) {
        return play(p, turned, anchors.subList(0, 1), null, probes, until);
    }

    private Replay.Played play(
            double[] p, Rig turned, List<Replay.Anchor> some, Change change, Probing.Probes probes, double until) {
        try {
            Replay replay = Replay.from(turned, weather, settled, readings.from(), p[floor], TOLERANCE, true);
            return replay.play(loads(p, change), some, turns(turned, change), probes.of(replay.plant()), until, STEP);
        } catch (StepFailure | RigFault | IllegalStateException cannot) {
            return null;
        }
    }

    private static List<Replay.Turn> turns(Rig before, Change change) {
        if (change == null || change.knob() == null || change.knob() == Knob.WOOD) return List.of();
        Rig other = change.knob().turned(before, Math.exp(change.size()));
        List<Replay.Turn> turns = new ArrayList<>();
        turns.add(new Replay.Turn(change.time(), other));
        if (change.until() < Double.POSITIVE_INFINITY) turns.add(new Replay.Turn(change.until(), before));
        return turns;
    }
}
