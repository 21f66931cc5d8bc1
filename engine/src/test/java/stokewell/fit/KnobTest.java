package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

class KnobTest {

    @Test
    void everyKnobOfARigTurnsSomethingAndLeavesTheRest() {
        Rig rig = Rigs.pumped();
        for (Knob k : Knob.of(rig)) {
            Rig turned = k.turned(rig, 1.2);
            if (k == Knob.WOOD) assertThat(turned).isEqualTo(rig);
            else assertThat(turned).as(k.name()).isNotEqualTo(rig);
            assertThat(k.turned(rig, 1)).isSameAs(rig);
        }
        assertThat(Knob.JACKET.turned(rig, 1.2).store().realLoss())
                .isEqualTo(1.2 * rig.store().realLoss());
    }
}
