package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermosiphonTest {

    /** Pull in Pa per metre; densities from IAPWS-IF97 at 1 atm. */
    @ParameterizedTest
    @CsvSource({
        "983.2106, 977.7793, 53.3", // 60/70 °C
        "983.2106, 971.8029, 111.87", // 60/80 °C
        "977.7793, 965.3187, 122.2", // 70/90 °C
        "992.2243, 971.8029, 200.3", // 40/80 °C
        "992.2243, 965.3187, 263.9" // 40/90 °C
    })
    void pullPerMetreIsTheTable(double cold, double hot, double pascal) {
        assertThat(Thermosiphon.head(cold, hot, 1)).isCloseTo(pascal, withinPercentage(0.5));
    }

    /** A rule of the trade: 113 Pa for 20 K over a metre, 225 Pa over two. */
    @Test
    void theTradesRuleHolds() {
        assertThat(Thermosiphon.head(983.2106, 971.8029, 2)).isCloseTo(225, withinPercentage(2));
    }

    @Test
    void aLoopIsTheSumOfItsSegments() {
        double[] density = {971.8, 977, 983.2, 980};
        double[] rise = {2, 0, -2, 0};
        assertThat(Thermosiphon.head(density, rise)).isCloseTo(Thermosiphon.head(983.2, 971.8, 2), within(1e-9));
    }

    @Test
    void aLoopAtOneTemperatureDoesNotMove() {
        double[] density = {980, 980, 980};
        assertThat(Thermosiphon.head(density, new double[] {1.5, -0.5, -1})).isCloseTo(0, within(1e-9));
    }

    @Test
    void slowLoopsFlowByTheClosedForm() {
        double laminar = Thermosiphon.laminarFlow(50, 1, 8, 0.026, 983, 5.2e-4, 4.66e-4, 4183);
        double general = Thermosiphon.steadyFlow(50, 1, 8, 0.026, 1.5e-6, 0, 983, 5.2e-4, 4.66e-4, 4183);
        assertThat(Friction.reynolds(laminar, 0.026, 4.66e-4)).isLessThan(1500);
        assertThat(general).isCloseTo(laminar, withinPercentage(0.01));
    }

    @Test
    void elbowsSlowTheLoop() {
        double free = Thermosiphon.steadyFlow(5000, 1, 8, 0.026, 1.5e-6, 0, 983, 5.2e-4, 4.66e-4, 4183);
        double bent = Thermosiphon.steadyFlow(5000, 1, 8, 0.026, 1.5e-6, 12, 983, 5.2e-4, 4.66e-4, 4183);
        assertThat(bent).isLessThan(free).isGreaterThan(0);
    }
}
