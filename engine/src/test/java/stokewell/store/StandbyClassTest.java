package stokewell.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandbyClassTest {

    /** Regulation (EU) 812/2013 annex II, table of standing losses, worked to 0.1 W. */
    @ParameterizedTest
    @CsvSource({
        "200, 31.8, 43.9, 61.4, 86.0, 107.0, 139.7, 169.7",
        "500, 43.5, 59.5, 83.2, 116.7, 145.1, 190.1, 231.1",
        "1000, 55.6, 75.9, 106.0, 148.7, 184.7, 242.5, 295.0"
    })
    void limitsOfTheRegulation(
            double litres, double aPlus, double a, double b, double c, double d, double e, double f) {
        double[] expected = {aPlus, a, b, c, d, e, f};
        for (int i = 0; i < expected.length; i++) {
            assertThat(StandbyClass.values()[i].limit(litres / 1000)).isCloseTo(expected[i], within(0.06));
        }
    }

    @ParameterizedTest
    @CsvSource({"A_PLUS, 71.6", "A, 97.4", "B, 136.0", "C, 190.9", "D, 237.0"})
    void limitsOfTwoCubicMetres(StandbyClass grade, double watts) {
        assertThat(grade.limit(2)).isCloseTo(watts, within(0.06));
    }

    /** 45 K test difference: 500 L class C 2.59 W/K, 1000 L 3.30 W/K. */
    @Test
    void limitsAsConductance() {
        assertThat(StandbyClass.C.limitUa(0.5)).isCloseTo(2.59, within(0.006));
        assertThat(StandbyClass.C.limitUa(1)).isCloseTo(3.30, within(0.006));
        assertThat(StandbyClass.of(0.5, 2.5)).isEqualTo(StandbyClass.C);
        assertThat(StandbyClass.of(0.5, 2.7)).isEqualTo(StandbyClass.D);
        assertThat(StandbyClass.of(0.5, 50)).isEqualTo(StandbyClass.G);
    }
}
