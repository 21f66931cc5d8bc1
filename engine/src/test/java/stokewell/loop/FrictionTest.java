package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrictionTest {

    /** Colebrook (1939), solved independently; columns are relative roughness 0, 1e-5, 1e-4, 1e-3, 1e-2, 0.05. */
    @ParameterizedTest
    @CsvSource({
        "4e3, 0.039907, 0.039917, 0.040008, 0.040910, 0.049082, 0.076987",
        "1e4, 0.030883, 0.030898, 0.031037, 0.032382, 0.043127, 0.073801",
        "1e5, 0.017990, 0.018044, 0.018514, 0.022175, 0.038504, 0.071781",
        "1e6, 0.011645, 0.011870, 0.013441, 0.019943, 0.037965, 0.071574",
        "1e7, 0.008103, 0.008996, 0.012166, 0.019667, 0.037910, 0.071553"
    })
    void colebrookIsTheMoodyChart(double re, double f0, double f1, double f2, double f3, double f4, double f5) {
        double[] rr = {0, 1e-5, 1e-4, 1e-3, 1e-2, 0.05};
        double[] f = {f0, f1, f2, f3, f4, f5};
        for (int i = 0; i < rr.length; i++) {
            assertThat(Friction.colebrook(re, rr[i])).isCloseTo(f[i], within(6e-7));
        }
    }

    /** Test values of the open library "fluids" (Bell), github.com/CalebBell/fluids. */
    @Test
    void bothFormulasReproduceThePublishedDigits() {
        assertThat(Friction.colebrook(1e5, 1e-4)).isCloseTo(0.018513866077471, within(1e-14));
        assertThat(Friction.darcy(1e5, 1e-4)).isCloseTo(0.018462624566280075, within(1e-14));
    }

    /** Churchill (1977), evaluated independently. */
    @ParameterizedTest
    @CsvSource({
        "1e4, 0, 0.031002", "1e4, 1e-4, 0.031178", "1e4, 1e-3, 0.032690", "1e4, 1e-2, 0.044044",
        "1e6, 0, 0.011612", "1e6, 1e-4, 0.013508", "1e6, 1e-3, 0.020022", "1e6, 1e-2, 0.037991",
        "500, 0, 0.12800", "1000, 0, 0.06400", "2000, 0, 0.032043", "3000, 0, 0.042975"
    })
    void churchillIsItsOwnFormula(double re, double rr, double f) {
        assertThat(Friction.darcy(re, rr)).isCloseTo(f, within(6e-7));
    }

    /** Hagen-Poiseuille, whatever the wall. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1, 10, 128, 1000})
    void laminarFlowIsSixtyFourOverReynolds(double re) {
        assertThat(Friction.darcy(re, 0.001)).isCloseTo(64 / re, withinPercentage(0.01));
    }

    /**
     * Çengel and Cimbala, Fluid Mechanics, example 8-3 in US and SI units and a problem of the same chapter; White, Fluid
     * Mechanics, example 6.7. They use Colebrook, so Churchill's 0.5 to 1.5 % difference is in the tolerance.
     */
    @ParameterizedTest
    @CsvSource({
        "0.0508, 5.663, 2.1336e-6, 998.9, 1.12148e-3, 60.96, 126400, 81400, 1.0",
        "0.05, 5.994, 2e-6, 999, 1.138e-3, 60, 134126, 96200, 1.0",
        "0.04, 7.9928, 2e-6, 999.1, 1.138e-3, 30, 223600, 238800, 1.0",
        "0.2, 180, 0.26e-3, 900, 9e-3, 500, 127300, 1036000, 1.5",
        "0.019939, 0.2, 1.5e-6, 983.2106, 4.6604e-4, 1, 27404, 253.1, 1.0"
    })
    void pipesLoseWhatTheBooksSay(
            double bore,
            double flow,
            double roughness,
            double rho,
            double mu,
            double length,
            double re,
            double loss,
            double off) {
        assertThat(Friction.reynolds(flow, bore, mu)).isCloseTo(re, withinPercentage(0.2));
        assertThat(length * Friction.pressureGradient(flow, bore, roughness, rho, mu))
                .isCloseTo(loss, withinPercentage(off));
    }

    @Test
    void aPipeWithoutFlowLosesNothingAndHasTheLaminarSlope() {
        double slope = 128 * 1e-3 / (Math.PI * 1000 * Math.pow(0.02, 4));
        assertThat(Friction.pressureGradient(0, 0.02, 1.5e-6, 1000, 1e-3)).isZero();
        assertThat(Friction.pressureGradientSlope(0, 0.02, 1.5e-6, 1000, 1e-3))
                .isCloseTo(slope, withinPercentage(1e-9));
    }

    @Property
    void lossIsOddAndRisesWithTheFlow(
            @ForAll @DoubleRange(min = -3, max = 3) double flow,
            @ForAll @DoubleRange(min = 0, max = 0.2) double millimetres) {
        double rough = millimetres / 1000;
        double here = Friction.pressureGradient(flow, 0.02, rough, 980, 5e-4);
        assertThat(Friction.pressureGradient(-flow, 0.02, rough, 980, 5e-4)).isEqualTo(-here);
        assertThat(Friction.pressureGradient(flow + 1e-3, 0.02, rough, 980, 5e-4))
                .isGreaterThan(here);
    }

    @Property
    void slopeIsTheDerivative(@ForAll @DoubleRange(min = -2, max = 2) double flow) {
        double h = 1e-6;
        double difference = (Friction.pressureGradient(flow + h, 0.02, 4.5e-5, 980, 5e-4)
                        - Friction.pressureGradient(flow - h, 0.02, 4.5e-5, 980, 5e-4))
                / (2 * h);
        assertThat(Friction.pressureGradientSlope(flow, 0.02, 4.5e-5, 980, 5e-4))
                .isCloseTo(difference, within(1e-4 * difference + 1e-3));
    }
}
