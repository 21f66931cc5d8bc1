package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CurveTest {

    @Property(tries = 200)
    void aCubicIsDrawnExactly(@ForAll @DoubleRange(min = -2, max = 3) double x) {
        Curve curve = Curve.of(v -> 1 + v * (2 - v * (0.5 + v)), -2, 3, 7);
        assertThat(curve.at(x)).isCloseTo(1 + x * (2 - x * (0.5 + x)), within(1e-12));
        assertThat(curve.slope(x)).isCloseTo(2 - x - 3 * x * x, within(1e-11));
    }

    /** 0 to 150 °C in 2 K steps, the bound that the class promises. */
    @Property(tries = 500)
    void waterIsDrawnToOnePartInAHundredThousand(@ForAll @DoubleRange(min = 273.15, max = 423.15) double t) {
        assertThat(DENSITY.at(t)).isCloseTo(Water.density(t), withinPercentage(1e-3));
        assertThat(VISCOSITY.at(t)).isCloseTo(Water.viscosity(t), withinPercentage(1e-3));
        assertThat(PRESSURE.at(t)).isCloseTo(Water.saturationPressure(t), withinPercentage(1e-3));
        assertThat(HEAT.at(t)).isCloseTo(Water.specificHeat(t), withinPercentage(1e-3));
    }

    private static final Curve DENSITY = Curve.of(Water::density, 273.15, 423.15, 75);
    private static final Curve VISCOSITY = Curve.of(Water::viscosity, 273.15, 423.15, 75);
    private static final Curve PRESSURE = Curve.of(Water::saturationPressure, 273.15, 423.15, 75);
    private static final Curve HEAT = Curve.of(Water::specificHeat, 273.15, 423.15, 75);

    @Test
    void errorFallsWithTheFourthPowerOfTheSpacing() {
        double coarse = worst(Curve.of(Math::sin, 0, 6, 24));
        double fine = worst(Curve.of(Math::sin, 0, 6, 48));
        assertThat(coarse / fine).isBetween(12.0, 40.0);
    }

    private static double worst(Curve curve) {
        double worst = 0;
        for (int i = 0; i <= 6000; i++) {
            worst = Math.max(worst, Math.abs(curve.at(i / 1000.0) - Math.sin(i / 1000.0)));
        }
        return worst;
    }

    @Test
    void neitherValueNorSlopeJumpsAnywhere() {
        Curve curve = Curve.of(Math::exp, 0, 1, 5);
        for (int i = -1; i <= 6; i++) {
            double node = i / 5.0;
            assertThat(curve.at(node + 1e-12)).isCloseTo(curve.at(node - 1e-12), within(1e-10));
            assertThat(curve.slope(node + 1e-12)).isCloseTo(curve.slope(node - 1e-12), within(1e-9));
        }
    }

    @Test
    void beyondItsEndsACurveGoesOnStraight() {
        Curve curve = Curve.of(Math::exp, 0, 1, 20);
        assertThat(curve.at(3)).isCloseTo(curve.at(1) + 2 * curve.slope(1), within(1e-12));
        assertThat(curve.at(-3)).isCloseTo(curve.at(0) - 3 * curve.slope(0), within(1e-12));
        assertThat(curve.slope(9)).isEqualTo(curve.slope(1));
        assertThat(curve.at(Double.NaN)).isNaN();
    }

    @Test
    void aCurveIsRefusedWhereItsFunctionBreaks() {
        assertThatThrownBy(() -> Curve.of(Math::log, 0, 1, 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not finite");
        assertThatThrownBy(() -> Curve.of(Math::exp, 1, 1, 10)).hasMessageContaining("low < high");
    }
}
