package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

/** Suction head against a textbook's two tanks, in feet. */
class SuctionTest {

    private static final double FOOT = 0.3048;
    private static final double SIXTY_F = 288.706;

    /** Water-plant operators' text: open tank, 60 F, level 15 ft over the pump, losses 2.4 ft: 34 + 15 - 0.6 - 2.4 = 46 ft. */
    @Test
    void anOpenTankAboveThePumpGivesFortySixFeet() {
        double feet = Suction.available(101325, 0, 15 * FOOT, 2.4 * FOOT, SIXTY_F) / FOOT;
        assertThat(feet).isCloseTo(46, offset(0.2));
    }

    /** The same text: a lift of 20 ft leaves 11 ft. */
    @Test
    void aSuctionLiftLeavesElevenFeet() {
        double feet = Suction.available(101325, 0, -20 * FOOT, 2.4 * FOOT, SIXTY_F) / FOOT;
        assertThat(feet).isCloseTo(11, offset(0.2));
    }

    @Test
    void atBoilingOnlyTheLevelIsLeft() {
        assertThat(Suction.available(101325, 0, 1.5, 0.2, 373.124)).isCloseTo(1.3, offset(0.01));
    }
}
