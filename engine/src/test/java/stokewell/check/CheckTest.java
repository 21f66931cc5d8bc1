package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

/** Of what is not known a check says so, and a stop comes first. */
class CheckTest {

    @Test
    void aRigOfWhichNothingIsKnownIsNeverFine() {
        Check unknown = Sound.answered(Rigs.pumped());
        for (String id : List.of(
                "vapours.present",
                "vapours.garage",
                "air.monoxide",
                "air.exhaust",
                "clearance.stove",
                "clearance.connector",
                "watch.unwatched",
                "wiring.breaker",
                "vent.valve",
                "vent.rise",
                "vent.shape",
                "vent.frost",
                "vent.feed",
                "boil.alarm",
                "control.hand",
                "frost.run",
                "water.level",
                "water.treated",
                "plastic.near")) {
            assertThat(unknown.of(id)).as(id).isNotNull();
            assertThat(unknown.of(id).level()).as(id).isEqualTo(Level.MIND);
            Finding known = Sound.answered(Sound.pumped()).of(id);
            if (known != null) assertThat(known.level()).as(id).isEqualTo(Level.FINE);
        }
    }

    @Test
    void aStopIsTheFirstFindingAndTheVerdict() {
        Check c = Sound.answered(Sound.safe(Sound.pumped(), "valveToOpen", true));
        assertThat(c.stops()).isTrue();
        assertThat(c.worst()).isEqualTo(Level.STOP);
        assertThat(c.findings().get(0).id()).isEqualTo("vent.valve");
        assertThat(Sound.answered(Sound.pumped()).stops()).isFalse();
    }

    @Test
    void idsAreGivenOnce() {
        for (Rig rig : List.of(Sound.pumped(), Rigs.pumped(), Sound.thermosiphon())) {
            assertThat(Sound.answered(rig).findings()).extracting(Finding::id).doesNotHaveDuplicates();
        }
    }
}
