package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** A drill's sentence says what its numbers say. */
class SentenceTest {

    /** 18 L of vessel for 800 L of water and no relief valve: a warm store alone is too much for it. */
    private static Rig full() {
        Rig rig = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.018, 75000, 100000));
        return Sound.safe(rig, "relief", null);
    }

    @Test
    void whatBurstsBeforeItBoilsIsNotToldAsHarmless() {
        int quiet = 0;
        for (Drill d : Sound.run(full(), EnumSet.allOf(Fault.class)).drills()) {
            boolean told = d.fault() != Fault.DRY_REFILLED && d.fault() != Fault.FROZEN_RUN;
            if (!d.possible() || !told || d.pressure() < Double.POSITIVE_INFINITY) continue;
            assertThat(d.sentence())
                    .as(d.fault().title())
                    .contains("bursts")
                    .doesNotContain("Nothing is in danger")
                    .doesNotContain("shut the air half");
            if (d.firstBoil() == Double.POSITIVE_INFINITY) quiet++;
        }
        assertThat(quiet).isPositive();
    }

    @Test
    void aNoughtHasNoSign() {
        assertThat(Telling.degrees(272.9)).startsWith("0 °C");
    }
}
