package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import stokewell.matter.Atmosphere;

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

    /**
     * Bachus and Custodio, Know and Understand Centrifugal Pumps: 7000 ft up, 50 F, a lift of 8 ft, losses 1 and 2 ft: 26.2 - 8 -
     * 0.411 - 1 - 2 = 14.8 ft.
     */
    @Test
    void aLiftOnAMountainLeavesFourteenFeet() {
        double air = Atmosphere.pressure(7000 * FOOT);
        double feet = Suction.available(air, 0, -8 * FOOT, 3 * FOOT, 283.15) / FOOT;
        assertThat(feet).isCloseTo(14.8, offset(0.2));
    }

    /** The same book's water table: at 180 F 7.51 psi and 0.972; an open tank 10 ft over the pump, 2 ft lost: 25.1 ft of hot water. */
    @Test
    void hotWaterTakesMostOfIt() {
        double feet = Suction.available(101325, 0, 10 * FOOT, 2 * FOOT, 355.372) / FOOT;
        assertThat(feet).isCloseTo((14.696 - 7.51) * 2.3106 / 0.972 + 8, offset(0.2));
    }

    @Test
    void atBoilingOnlyTheLevelIsLeft() {
        assertThat(Suction.available(101325, 0, 1.5, 0.2, 373.124)).isCloseTo(1.3, offset(0.01));
    }
}
