package stokewell.sheet;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.weather.Weather;

/**
 * All that the sheet tells of a rig.
 *
 * @param drills    the normal day and every drill
 * @param check     the findings
 * @param firstFire the first small fire, run through
 */
public record SheetFacts(Rig rig, Drills.Outcome drills, Check check, FirstFire firstFire) {

    /** Runs a day, its drills and the first fire. @param weather made for the rig's surfaces */
    public static SheetFacts of(Rig rig, Weather weather, NightRun.Ask ask) {
        return of(rig, weather, Drills.run(rig, weather, ask, EnumSet.allOf(Fault.class)));
    }

    /** Takes the drills as they were run, all of them, and runs the first fire. */
    public static SheetFacts of(Rig rig, Weather weather, Drills.Outcome drills) {
        Check check = Check.of(rig, drills.day(), drills.drills());
        FirstFire first =
                FirstFire.run(rig, weather, drills.day().at(drills.day().from()));
        return new SheetFacts(rig, drills, check, first);
    }

    /** How many findings say that no fire may be lit. */
    public int stops() {
        return check.at(Level.STOP).size();
    }

    /** Stops and what must be mended, worst first. */
    public List<Finding> grave() {
        return check.findings().stream()
                .filter(f -> f.level().asBadAs(Level.MEND))
                .toList();
    }

    /** Minutes from a power cut at the worst moment until water boils; infinite for never, NaN without water. */
    public double powerCut() {
        return boils(List.of(Fault.POWER_OUT));
    }

    private double boils(Collection<Fault> faults) {
        double least = Double.NaN;
        for (Drill d : drills.drills()) {
            if (faults.contains(d.fault()) && d.possible() && !(d.firstBoil() / 60 >= least))
                least = d.firstBoil() / 60;
        }
        return least;
    }
}
