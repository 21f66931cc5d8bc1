package stokewell.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class StandingTest {

    private static final double AREA = 1.6 * 1.6;
    private final Standing slab = new Standing.OnSlab(0.1, 1.8, 0.85);

    /** A rule of the trade: 1.6 m square at 75 over 8 °C loses 190 W to a bare slab, 48 W over 100 mm of board. */
    @Test
    void aHundredMillimetresOfBoardSaveThreeQuarters() {
        double bare = AREA * slab.toGround(0, AREA) * (75 - 8);
        double boarded = AREA * slab.toGround(Standing.board(0.1, 0.036), AREA) * (75 - 8);
        assertThat(bare).isCloseTo(190, withinPercentage(7));
        assertThat(boarded).isCloseTo(48, withinPercentage(7));
    }

    /** Disk on a half-space, S = 2 D: 1 m² on 1 W/(m K) is 2.257 W/(m² K) by hand. */
    @Test
    void bareGroundIsTheDisk() {
        assertThat(1 / Standing.ground(1, 1)).isCloseTo(2.2568, within(1e-4));
        assertThat(new Standing.OnGround(1).toGround(0, 1)).isCloseTo(2.2568, within(1e-4));
        assertThat(new Standing.OnGround(1).toRoom(0)).isZero();
    }

    @Test
    void blocksGiveToTheRoomWhatTheyKeepFromTheGround() {
        Standing blocks = new Standing.OnBlocks(0.2, 0.15, 1.0, 1.0);
        assertThat(blocks.toRoom(0)).isCloseTo(0.85 / 0.17, within(1e-12));
        assertThat(blocks.toGround(0, AREA)).isLessThan(slab.toGround(0, AREA));
        assertThat(new Standing.OnBlocks(0.2, 0, 1.0, 1.0).toGround(0, AREA)).isZero();
        assertThat(new Standing.InTheRoom().toRoom(2)).isCloseTo(1 / 2.17, within(1e-12));
    }

    @Test
    void moreBoardNeverLosesMore() {
        for (double r = 0; r < 4; r += 0.25) {
            assertThat(slab.toGround(r + 0.25, AREA)).isLessThan(slab.toGround(r, AREA));
        }
    }
}
