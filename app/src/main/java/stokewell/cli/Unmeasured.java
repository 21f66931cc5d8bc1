package stokewell.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.UnitSystem;
import stokewell.rig.Habit;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.run.Beside;
import stokewell.run.Night;
import stokewell.run.NightRun;

/**
 * What nobody has measured yet, and how far each such number moves the morning: the night is run with it low and with it high.
 * The ranges are those that builders meet before measuring (common practice, no source).
 */
final class Unmeasured {

    /** How to measure something, in either units. */
    record How(String si, String us) {
        String in(UnitSystem units) {
            return units == UnitSystem.US ? us : si;
        }
    }

    /** Something that a person can measure, and what stands in a rig file for its low and its high end. */
    private record Matter(String name, How how, BiFunction<Rig, Boolean, List<String>> settings) {

        Matter(String name, String how, BiFunction<Rig, Boolean, List<String>> settings) {
            this(name, new How(how, how), settings);
        }
    }

    /** What one matter does to the morning, K: rooms with it low and high. */
    record Moved(String name, How how, double low, double high) {
        double spread() {
            return Math.abs(high - low);
        }
    }

    /** A night and how far it is to be trusted. @param room at the hour, K @param moved widest first */
    record Range(Night night, double room, double lowest, double highest, List<Moved> moved) {}

    private static final List<Matter> MATTERS = List.of(
            new Matter(
                    "how fast the shop loses heat",
                    "one night's cooling without heat: room and outdoors in the evening and in the morning",
                    (rig, high) -> {
                        // walls and roof by a factor of two in all, air by three each way
                        double loss = high ? 1.4 : 0.7;
                        double leak = rig.room().leakage().at50Pa() * 3600 * (high ? 2.2 : 0.45);
                        return List.of(
                                set("room.walls.realLoss", loss),
                                set("room.roof.realLoss", loss),
                                set("room.leakage.at50Pa", leak) + " 1/h");
                    }),
            new Matter(
                    "weight of wood in a day",
                    "a bathroom scale: every armload of one evening, written down",
                    (rig, high) -> {
                        List<String> list = new ArrayList<>();
                        Habit.Clock clock = (Habit.Clock) rig.habit();
                        for (int i = 0; i < clock.loads().size(); i++) {
                            double mass = clock.loads().get(i).mass() * (high ? 1.4 : 0.6);
                            list.add(set("habit.clock.loads." + i + ".mass", mass) + " kg");
                        }
                        return list;
                    }),
            new Matter("water in the store", "a bucket or a meter while you fill it", (rig, high) -> {
                double f = high ? 1.7 : 0.6;
                return rig.store().shape() instanceof Store.Shape.Lying l
                        ? List.of(set("store.shape.lying.length", l.length() * f) + " m")
                        : List.of(set(
                                        "store.shape.round.diameter",
                                        ((Store.Shape.Round) rig.store().shape()).diameter() * Math.sqrt(f))
                                + " m");
            }),
            new Matter(
                    "share of the fire that goes to water",
                    // 1.14 kWh/(m3 K): water between 50 and 90 C
                    new How(
                            "the store's rise in an hour of steady fire, fan off: kW = 1.14 x m3 x K",
                            "the store's rise in an hour of steady fire, fan off: Btu/h = 8.2 x gal x degrees F"),
                    (rig, high) -> {
                        Pickup p = rig.pickups().get(0);
                        return List.of(set("pickups." + p.name() + ".area", p.area() * (high ? 1.5 : 0.6)) + " m2");
                    }),
            new Matter(
                    "what the store loses by itself",
                    "a quiet night, fan and pump off: its heights in the evening and in the morning",
                    (rig, high) -> List.of(set("store.realLoss", high ? 3 : 1))),
            new Matter(
                    "water in the wood",
                    "a pin meter on a fresh split face; it reads on dry wood",
                    (rig, high) -> List.of(set("fuel.moisture", high ? 30 : 14) + " %")));

    private Unmeasured() {}

    private static String set(String key, double value) {
        return key + "=" + String.format(Locale.ROOT, "%.5g", value);
    }

    /** Runs the night of a file as it is, and with each matter at both ends. */
    static Range of(Path file) throws IOException, RigFileFault {
        Rig rig = RigFile.read(file, List.of()).rig();
        Beside<Night> base = Beside.begin(() -> night(rig, file));
        List<Rig> ends = new ArrayList<>();
        for (Matter m : MATTERS) {
            for (boolean high : new boolean[] {false, true}) {
                ends.add(RigFile.read(file, m.settings.apply(rig, high)).rig());
            }
        }
        List<Double> rooms =
                ends.parallelStream().map(r -> night(r, file).morning().room()).toList();
        Night night = base.done();
        double room = night.morning().room();
        List<Moved> moved = new ArrayList<>();
        double down = 0;
        double up = 0;
        for (int i = 0; i < MATTERS.size(); i++) {
            Matter m = MATTERS.get(i);
            double a = rooms.get(2 * i);
            double b = rooms.get(2 * i + 1);
            moved.add(new Moved(m.name, m.how, a, b));
            down += Math.pow(Math.max(0, room - Math.min(a, b)), 2);
            up += Math.pow(Math.max(0, Math.max(a, b) - room), 2);
        }
        moved.sort(Comparator.comparingDouble(Moved::spread).reversed());
        return new Range(night, room, room - Math.sqrt(down), room + Math.sqrt(up), moved);
    }

    private static Night night(Rig rig, Path file) {
        WeatherChoice outdoors = WeatherChoice.of(null, rig, file, UnitSystem.SI);
        NightRun.Ask ask = Hours.night(outdoors, null, null, "7:30", "10 C");
        // its numbers alone are wanted, not the words about its start
        return NightRun.record(NightRun.settled(rig, outdoors.weather(), ask), outdoors.weather(), ask, "");
    }
}
