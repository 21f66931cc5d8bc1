package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PumpCurveTest {

    private final PumpCurve pump =
            PumpCurve.through(40000, 0.8, new double[] {0.2, 0.4, 0.6}, new double[] {36000, 28000, 16000}, 25, 45);

    /** Affinity: flow as n, head as n², power as n³; any pump handbook. */
    @Test
    void halfSpeedIsHalfFlowQuarterHeadEighthPower() {
        assertThat(pump.head(0.2, 0.5)).isCloseTo(0.25 * pump.head(0.4), within(1e-9));
        assertThat(pump.power(0.2, 0.5)).isCloseTo(0.125 * pump.power(0.4, 1), within(1e-9));
    }

    /** 0.5 L/s over 3 m of water at 998.2 kg/m³ is 14.68 W. */
    @Test
    void hydraulicPowerIsRhoGqh() {
        PumpCurve flat = PumpCurve.between(998.2 * 9.80665 * 3, 1e6, 40);
        assertThat(flat.hydraulicPower(0.5 * 0.9982, 1, 998.2)).isCloseTo(14.68, within(0.01));
    }

    @Test
    void curvePassesItsEndsAndNearItsPoints() {
        assertThat(pump.head(0)).isEqualTo(40000);
        assertThat(pump.head(0.8)).isCloseTo(0, within(1e-9));
        assertThat(pump.maxFlow()).isCloseTo(0.8, within(1e-12));
        assertThat(pump.head(0.4)).isCloseTo(28000, withinPercentage(5));
        assertThat(pump.power(0, 1)).isEqualTo(25);
        assertThat(pump.power(0.8, 1)).isCloseTo(45, within(1e-12));
    }

    @Test
    void pointsOnAQuadraticComeBackExactly() {
        PumpCurve p = PumpCurve.through(30000, 0.5, new double[] {0.25}, new double[] {17500}, 30, 30);
        assertThat(p.head(0.25)).isCloseTo(17500, within(1e-6));
        assertThat(p.linear()).isCloseTo(40000, within(1e-6));
    }

    @Test
    void aDeadPumpOnlyResists() {
        assertThat(pump.head(0.1, 0)).isNegative();
        assertThat(pump.head(-0.1, 0)).isPositive();
        assertThat(pump.head(0, 0)).isZero();
        assertThat(pump.power(0.1, 0)).isZero();
    }

    @Property
    void headAlwaysFallsWithFlow(
            @ForAll @DoubleRange(min = -2, max = 3) double flow,
            @ForAll @DoubleRange(min = 0.1, max = 1.2) double speed) {
        assertThat(pump.head(flow + 1e-3, speed)).isLessThan(pump.head(flow, speed));
        double h = 1e-6;
        double slope = (pump.head(flow + h, speed) - pump.head(flow - h, speed)) / (2 * h);
        assertThat(pump.headSlope(flow, speed)).isCloseTo(slope, within(1 + 1e-5 * Math.abs(slope)));
    }

    @Test
    void aCurveThatRisesIsRefused() {
        assertThatThrownBy(() -> new PumpCurve(1000, -1, 0, 10, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
