package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;

/** A drill and the check never say different things of one rig, and a few drills are enough to see every stop. */
class SeverityTest {

    private static Rig closed() {
        return Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.12, 75000, 100000));
    }

    private static List<Rig> rigs() {
        Rig bare = Sound.safe(Sound.pumped(), "relief", null);
        var header = Sound.pumped().loop().header();
        return List.of(
                Sound.pumped(),
                Rigs.pumped(),
                Sound.thermosiphon(),
                Rigs.thermosiphon(),
                Sound.safe(Sound.pumped(), "valveToOpen", true),
                Sound.safe(Sound.pumped(), "valveToOpen", null),
                bare,
                Sound.vent(bare, "warm", false),
                Sound.loop(bare, "header", Changed.with(header, "vent", 0.004)),
                Sound.around(Sound.pumped(), "coldAndFull", 30 * 86400.0),
                Sound.around(Sound.thermosiphon(), "coldAndFull", 30 * 86400.0),
                closed(),
                Sound.safe(closed(), "relief", null),
                Sound.relief(closed(), "rated", 1000.0));
    }

    private static Set<String> stops(Check check) {
        return check.at(Level.STOP).stream().map(Finding::id).collect(Collectors.toSet());
    }

    @Test
    void theCheckIsAtLeastAsBadAsEveryDrillAndFewDrillsFindEveryStop() {
        int stopped = 0;
        for (Rig rig : rigs()) {
            Drills.Outcome all = Sound.run(rig, EnumSet.allOf(Fault.class));
            Check check = Check.of(rig, all.day(), all.drills());
            for (Drill d : all.drills()) {
                if (d.level() == Level.STOP)
                    assertThat(check.stops())
                            .as(d.fault() + " of " + rig.safety())
                            .isTrue();
                if (d.level() != Level.MEND) continue;
                assertThat(check.worst()).isLessThanOrEqualTo(Level.MEND);
                boolean said = check.findings().stream()
                        .anyMatch(f -> f.level().asBadAs(Level.MEND)
                                && (f.id().startsWith("drill.")
                                        || List.of(Severity.answers(d.fault())).contains(f.id())));
                assertThat(said).as(d.fault() + " is told by the check").isTrue();
            }
            Check quick =
                    Check.of(rig, all.day(), all.only(Drills.deciding(rig)).drills());
            assertThat(quick.stops()).as(rig.safety().toString()).isEqualTo(check.stops());
            assertThat(stops(check)).containsAll(stops(quick));
            if (check.stops()) stopped++;
        }
        // the list holds rigs that must not be lit, and rigs that may
        assertThat(stopped).isBetween(6, rigs().size() - 4);
    }

    @Test
    void drillsThatRunSideBySideComeToTheSameEveryTime() {
        List<Drill> once = Sound.run(Sound.pumped(), EnumSet.allOf(Fault.class)).drills();
        List<Drill> again =
                Sound.run(Sound.pumped(), EnumSet.allOf(Fault.class)).drills();
        for (int i = 0; i < once.size(); i++) {
            // a fault that this rig cannot have leaves its numbers NaN, both times
            assertThat(again.get(i).possible()).isEqualTo(once.get(i).possible());
            assertThat(again.get(i).sentence()).isEqualTo(once.get(i).sentence());
            // compiled and interpreted exponentials may differ in the last digit
            assertThat(again.get(i).boils()).hasSameSizeAs(once.get(i).boils());
            for (int k = 0; k < once.get(i).boils().size(); k++) {
                assertThat(again.get(i).boils().get(k).pickup())
                        .isEqualTo(once.get(i).boils().get(k).pickup());
                assertThat(same(
                                again.get(i).boils().get(k).after(),
                                once.get(i).boils().get(k).after()))
                        .isTrue();
            }
            assertThat(same(again.get(i).heat(), once.get(i).heat())).isTrue();
            assertThat(again.get(i).course().water())
                    .usingComparatorWithPrecision(1e-3f)
                    .containsExactly(once.get(i).course().water());
        }
    }

    private static boolean same(double a, double b) {
        return Double.compare(a, b) == 0 || Math.abs(a - b) <= 1e-6 * Math.abs(b);
    }

    @Test
    void whatNobodyHasSaidIsAskedAndNeitherFineNorAStop() {
        Rig unsaid = Sound.safe(Sound.thermosiphon(), "valveToOpen", null);
        Drills.Outcome o = Sound.run(unsaid, EnumSet.of(Fault.VALVE_SHUT));
        Drill d = o.of(Fault.VALVE_SHUT);
        assertThat(d.level()).isNotIn(Level.STOP, Level.FINE);
        Check check = Check.of(unsaid, o.day(), o.drills());
        assertThat(check.of("vent.valve").level()).isEqualTo(Level.MIND);
        assertThat(check.stops()).isFalse();
    }
}
