package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;

/** Every drill and the check come to an end on rigs that nobody would draw, and say nothing that is no number. */
class OddRigsTest {

    private static final int RIGS = 10;

    private static void looked(Rig rig) {
        Drills.Outcome o = Sound.run(rig, EnumSet.allOf(Fault.class));
        assertThat(o.drills()).as(rig.name()).hasSize(Fault.values().length);
        for (Drill d : o.drills()) {
            String where = rig.name() + ", " + d.fault() + ": " + d.sentence();
            assertThat(d.sentence())
                    .as(where)
                    .isNotBlank()
                    .doesNotContain("NaN")
                    .doesNotContain("Infinity");
            if (!d.possible()) continue;
            assertThat(d.heat()).as(where).isBetween(0.0, 3e5);
            assertThat(d.waterLost()).as(where).isBetween(-1e-6, 3000.0);
            assertThat(d.drawn()).as(where).isGreaterThanOrEqualTo(0);
            for (Drill.Guard g : d.guards()) assertThat(g.name()).as(where).isNotBlank();
        }
        Check check = Check.of(rig, o.day(), o.drills());
        assertThat(check.whole()).isTrue();
        for (Finding f : check.findings()) {
            assertThat(f.what() + f.why() + f.remedy() + f.basis())
                    .as(rig.name() + " " + f.id())
                    .doesNotContain("NaN")
                    .doesNotContain("Infinity");
        }
        assertThat(Check.of(rig, o.day(), o.only(EnumSet.of(Fault.LEAK)).drills())
                        .whole())
                .isFalse();
    }

    @Test
    void drawnByLot() {
        for (int seed = 0; seed < RIGS; seed++) looked(RandomRigs.byClock(seed));
    }

    @Test
    void closedBehindACoilWithGlycolAndWithNoWaterAtAll() {
        looked(Rigs.hall());
        looked(Rigs.closed());
        looked(Rigs.pumped().withoutWater());
        Rig sealed = Rigs.hall();
        looked(sealed.secured(new Safety(
                null, null, null, null, new Safety.Vessel(0.05, 75000, 100000), null, null, null, null, null)));
    }
}
