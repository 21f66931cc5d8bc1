package stokewell.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import stokewell.rig.Rig;
import stokewell.run.Night;

/**
 * All findings on a rig, worst first. They help a person see; they do not approve anything: local code and a licensed person
 * go before every one of them.
 *
 * @param whole whether every fault was drilled for it; else there may be more
 */
public record Check(List<Finding> findings, boolean whole) {

    public Check {
        findings = List.copyOf(findings);
    }

    /** Findings of which nobody has said that they are all. */
    public Check(List<Finding> findings) {
        this(findings, false);
    }

    /** Looks at a rig, its normal day and its drills; drills that were not run are not missed. */
    public static Check of(Rig rig, Night day, List<Drill> drills) {
        Subject s = new Subject(rig, day, List.copyOf(drills));
        Findings f = new Findings();
        RoomRules.vapours(s, f);
        if (s.wet()) {
            BoilRules.look(s, f);
            ControlRules.look(s, f);
            DumpRules.look(s, f);
            OutletRules.look(s, f);
            HeaderRules.look(s, f);
            FlowRules.look(s, f);
            FrostRules.look(s, f);
            PumpRules.look(s, f);
            MetalRules.look(s, f);
        }
        if (rig.store() != null) {
            StoreRules.look(s, f);
            FloorRules.look(s, f);
        }
        FireRules.look(s, f);
        RoomRules.look(s, f);
        CareRules.look(s, f);
        for (Drill d : s.drills()) answer(d, f);
        List<Finding> sorted =
                f.list().stream().sorted(Comparator.comparing(Finding::level)).toList();
        boolean whole =
                Arrays.stream(Fault.values()).allMatch(fault -> drills.stream().anyMatch(d -> d.fault() == fault));
        return new Check(sorted, whole);
    }

    /** What a drill came to is a finding too, at no lesser level, where no rule has said it already. */
    private static void answer(Drill d, Findings f) {
        if (d.failed()) {
            f.mend(
                    "drill." + d.fault().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    "The drill \"" + d.fault().title() + "\" could not be run.",
                    d.sentence(),
                    "Take it as not survived until it is known.",
                    "a run that failed");
            return;
        }
        if (!d.possible() || !d.level().asBadAs(Level.MEND)) return;
        for (String id : Severity.answers(d.fault())) {
            for (Finding has : f.list()) if (has.id().equals(id) && has.level().asBadAs(d.level())) return;
        }
        String name = d.fault().title();
        f.add(
                d.level(),
                "drill." + d.fault().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                Character.toUpperCase(name.charAt(0))
                        + name.substring(1)
                        + (d.firstBoil() < Double.POSITIVE_INFINITY
                                ? " boils the water " + Telling.later(d.firstBoil()) + "."
                                : " is not survived unharmed."),
                d.sentence(),
                "Give the heat a way out that needs nothing that can fail so, and a way out for steam that is never shut.",
                "a drill at the worst moment of the normal day");
    }

    /** Whether a fire must not be lit on it. */
    public boolean stops() {
        return worst() == Level.STOP;
    }

    /** The worst level found. */
    public Level worst() {
        return findings.isEmpty() ? Level.FINE : findings.get(0).level();
    }

    /** Findings of one level. */
    public List<Finding> at(Level level) {
        return findings.stream().filter(f -> f.level() == level).toList();
    }

    /** The finding with an id, or null. */
    public Finding of(String id) {
        for (Finding f : findings) if (f.id().equals(id)) return f;
        return null;
    }
}
