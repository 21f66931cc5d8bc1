package stokewell.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Changed;
import stokewell.rig.Materials;
import stokewell.rig.Metal;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;
import stokewell.rig.Surroundings;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** A rig of which all questions are answered well, ways to spoil one thing in it, and its runs. */
final class Sound {

    private static final Map<String, Drills.Outcome> RUN = new HashMap<>();

    private Sound() {}

    static Safety safety() {
        return new Safety(
                false,
                true,
                new Safety.OpenVent(0.6, true, true, 0.022, 0.06, true),
                new Safety.ReliefValve(150000, 40000, 0.015, true, true),
                null,
                null,
                null,
                new Materials(Metal.STEEL, 5, Metal.STEEL, Metal.STEEL, Double.NaN, true, false, 40, 9.5),
                new Surroundings(
                        false, false, true, 1.2, false, 0.6, 30000, 0, 0.01, 60, 12 * 3600, true, false, true, true,
                        true, true, true),
                null);
    }

    /** Pumped, with nothing that works without power: its answers are good, its physics is not. */
    static Rig pumped() {
        return Rigs.pumped().secured(safety());
    }

    /** The same circulating by itself. */
    static Rig thermosiphon() {
        return Rigs.thermosiphon().secured(safety());
    }

    static Rig around(Rig rig, String name, Object value) {
        return rig.secured(Changed.with(
                rig.safety(), "surroundings", Changed.with(rig.safety().surroundings(), name, value)));
    }

    static Rig material(Rig rig, String name, Object value) {
        return rig.secured(Changed.with(
                rig.safety(), "materials", Changed.with(rig.safety().materials(), name, value)));
    }

    static Rig vent(Rig rig, String name, Object value) {
        return rig.secured(
                Changed.with(rig.safety(), "vent", Changed.with(rig.safety().vent(), name, value)));
    }

    static Rig relief(Rig rig, String name, Object value) {
        return rig.secured(
                Changed.with(rig.safety(), "relief", Changed.with(rig.safety().relief(), name, value)));
    }

    static Rig safe(Rig rig, String name, Object value) {
        return rig.secured(Changed.with(rig.safety(), name, value));
    }

    static Rig loop(Rig rig, String name, Object value) {
        return rig.plumbed(Changed.with(rig.loop(), name, value));
    }

    static Rig store(Rig rig, String name, Object value) {
        return Changed.with(rig, "store", Changed.with(rig.store(), name, value));
    }

    static Plant plant(Rig rig) {
        return Compiler.compile(rig, weather(rig));
    }

    private static Weather weather(Rig rig) {
        Site site = Compiler.site(rig);
        return Weather.day(
                new DayRange(rig.weather().low(), rig.weather().high()),
                rig.weather().wind(),
                rig.weather().sun(),
                site,
                LocalDate.of(2023, 1, 15),
                Compiler.surfaces(rig));
    }

    static Drills.Outcome run(Rig rig, Set<Fault> faults) {
        LocalDateTime from = LocalDateTime.of(2023, 1, 16, 8, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, Simulation.TOLERANCE);
        return Drills.run(rig, weather(rig), ask, faults);
    }

    /** All drills of one of the two rigs here, run once. */
    static Drills.Outcome outcome(Rig rig) {
        return RUN.computeIfAbsent(rig.name(), n -> run(rig, EnumSet.allOf(Fault.class)));
    }

    /** The check of a rig that differs from one of the two only in what it answers. */
    static Check answered(Rig rig) {
        Drills.Outcome o = outcome(rig.name().equals("pumped") ? pumped() : thermosiphon());
        return Check.of(rig, o.day(), o.drills());
    }

    /** The check of a rig that differs in its physics. */
    static Check rerun(Rig rig) {
        Drills.Outcome o = run(rig, EnumSet.allOf(Fault.class));
        return Check.of(rig, o.day(), o.drills());
    }
}
