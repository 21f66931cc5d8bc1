package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stokewell.balance.Wiring;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.run.Given;
import stokewell.run.Ledger;
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

    private static final double STEP = 300;
    /** What the sensors begin with is not known everywhere: so long is played but not compared, s. */
    public static final double LEAD = 4 * 3600;

    private static final double TOLERANCE = 5 * Simulation.TOLERANCE;
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
    private final Observed observed;
    private final Given given;
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
        firstOffset = unknowns.size();
        List<Series> series = new ArrayList<>();
        for (Map.Entry<Spot, Series> e : readings.at().entrySet()) {
            if (!e.getKey().compared() || e.getValue().size() < 8) continue;
            spots.add(e.getKey());
            series.add(e.getValue());
            // a logger's own offset: common practice, half a degree, a strapped-on pipe sensor more
            double spread = e.getKey() == Spot.FLOW || e.getKey() == Spot.RETURN ? 2 : 0.5;
            unknowns.add(new Unknown(
                    e.getKey().words + " offset",
                    "what the sensor at " + e.getKey().words + " reads too much",
                    0,
                    spread,
                    -8,
                    8,
                    0));
        }
        observed = observed(series);
        given = given();
    }

    private Observed observed(List<Series> series) {
        List<Series> binned = new ArrayList<>();
        int rows = 0;
        for (Series s : series) {
            Series b = s.between(readings.from() + LEAD, readings.until()).averaged(BIN);
            binned.add(b);
            rows += b.size();
        }
        double[] time = new double[rows];
        double[] value = new double[rows];
        List<Observed.Channel> channels = new ArrayList<>();
        int at = 0;
        for (int c = 0; c < binned.size(); c++) {
            Series b = binned.get(c);
            System.arraycopy(b.time(), 0, time, at, b.size());
            System.arraycopy(b.value(), 0, value, at, b.size());
            channels.add(new Observed.Channel(spots.get(c).words, at, at + b.size(), 3 * spots.get(c).error, 0.1));
            at += b.size();
        }
        return new Observed(time, value, channels);
    }

    /** What the sensors say at the start. */
    private Given given() {
        double room = first(Spot.ROOM);
        double top = first(Spot.STORE_TOP);
        double bottom = first(Spot.STORE_BOTTOM);
        double middle = first(Spot.STORE_MIDDLE);
        int[] layers = settled.plant().store();
        if (layers.length == 0) return new Given(room, Double.NaN, Double.NaN, Double.NaN);
        double[] x = settled.columns();
        double usual = Math.max(0, x[layers[0]] - x[layers[layers.length - 1]]);
        if (Double.isNaN(top) && !Double.isNaN(middle)) top = middle + 0.5 * usual;
        if (Double.isNaN(bottom) && !Double.isNaN(middle)) bottom = middle - 0.5 * usual;
        if (Double.isNaN(top) && !Double.isNaN(bottom)) top = bottom + usual;
        if (!Double.isNaN(top) && Double.isNaN(bottom)) bottom = top - usual;
        return new Given(room, top, bottom, Double.NaN);
    }

    private double first(Spot spot) {
        Series s = readings.of(spot);
        if (s == null || s.size() == 0) return Double.NaN;
        Series begin = s.between(readings.from(), readings.from() + 1800);
        return begin.size() == 0 ? Double.NaN : begin.quantile(0.5);
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
        return turned;
    }

    /** The loads with their weights as estimated. */
    public List<Replay.Load> loads(double[] p) {
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
            loads.add(new Replay.Load(b.time(), factor * b.mass()));
        }
        return loads;
    }

    @Override
    public double[] at(double[] p) {
        Replay.Played played = play(p, rig(p), probesOf(spots));
        if (played == null) return null;
        double[] out = new double[observed.rows()];
        for (int c = 0; c < spots.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            double[] read = played.read()[c];
            double offset = p[firstOffset + c];
            for (int i = channel.from(); i < channel.until(); i++) {
                double place = (observed.time()[i] - readings.from()) / STEP;
                int a = (int) Math.min(read.length - 2.0, Math.max(0, Math.floor(place)));
                out[i] = read[a] + (place - a) * (read[a + 1] - read[a]) + offset;
            }
        }
        return out;
    }

    @Override
    public double[] slope(int j, double[] p) {
        if (j < firstOffset) return null;
        double[] one = new double[observed.rows()];
        Observed.Channel channel = observed.channels().get(j - firstOffset);
        Arrays.fill(one, channel.from(), channel.until(), 1);
        return one;
    }

    /** Plays a rig through the days; null where the engine cannot run it. */
    public Replay.Played play(double[] p, Rig turned, Probes probes) {
        return play(p, turned, probes, readings.until());
    }

    /** As {@link #play(double[], Rig, Probes)}, to another end. */
    public Replay.Played play(double[] p, Rig turned, Probes probes, double until) {
        try {
            Replay replay = Replay.from(turned, weather, settled, readings.from(), given, p[floor], TOLERANCE, true);
            return replay.play(loads(p), probes.of(replay.plant()), until, STEP);
        } catch (StepFailure | RigFault | IllegalStateException cannot) {
            return null;
        }
    }

    /** The energy books of the days as estimated; null where they cannot be run. */
    public Ledger books(double[] p, Rig turned) {
        Replay.Played played = play(p, turned, plant -> List.of());
        return played == null ? null : played.ledger();
    }

    /** Makes probes for a plant. */
    public interface Probes {
        List<Replay.Probe> of(Plant plant);
    }

    /** One probe a place. */
    public static Probes probesOf(List<Spot> spots) {
        return plant -> spots.stream().map(s -> probe(s, plant)).toList();
    }

    private static Replay.Probe probe(Spot spot, Plant plant) {
        int[] store = plant.store();
        return switch (spot) {
            case ROOM -> single(spot, plant.room());
            // a sensor in a well stands a tenth of the height off the end: common practice, no source
            case STORE_TOP -> single(spot, store[(int) Math.floor(0.1 * store.length)]);
            case STORE_MIDDLE -> middle(spot, store);
            case STORE_BOTTOM -> single(spot, store[store.length - 1 - (int) Math.floor(0.1 * store.length)]);
            case FLOW -> single(spot, state(plant, "supply pipe"));
            case RETURN -> single(spot, state(plant, "return pipe"));
            case SLAB -> single(spot, state(plant, "floor slab"));
            case STOVE -> single(spot, plant.body());
            case OUTDOOR, FLUE, NOTHING -> throw new IllegalArgumentException(spot + " is not compared");
        };
    }

    private static Replay.Probe middle(Spot spot, int[] store) {
        int n = store.length;
        if (n % 2 == 1) return single(spot, store[n / 2]);
        return new Replay.Probe(spot.words, new int[] {store[n / 2 - 1], store[n / 2]}, new double[] {0.5, 0.5});
    }

    private static Replay.Probe single(Spot spot, int column) {
        return new Replay.Probe(spot.words, new int[] {column}, new double[] {1});
    }

    /** The last state of a name or of its numbered pieces. */
    private static int state(Plant plant, String name) {
        List<Wiring.State> states = plant.network().wiring().states();
        int found = -1;
        for (int i = 0; i < states.size(); i++) {
            String own = states.get(i).name();
            if (own.equals(name) || own.matches(java.util.regex.Pattern.quote(name) + " \\d+")) found = i;
        }
        if (found < 0) throw new IllegalArgumentException("the rig has no " + name);
        return Wiring.OUTSIDE + found;
    }

    /** Which places a rig has at all. */
    public static List<Spot> spotsOf(Rig rig) {
        Map<Spot, Boolean> has = new EnumMap<>(Spot.class);
        for (Spot s : Spot.values()) has.put(s, true);
        boolean store = rig.store() != null;
        for (Spot s : List.of(Spot.STORE_TOP, Spot.STORE_MIDDLE, Spot.STORE_BOTTOM)) has.put(s, store);
        for (Spot s : List.of(Spot.FLOW, Spot.RETURN)) has.put(s, rig.loop() != null);
        has.put(Spot.SLAB, rig.room().floor() instanceof stokewell.rig.Room.Floor.Slab);
        return Arrays.stream(Spot.values()).filter(has::get).toList();
    }
}
