package stokewell.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AirTubesTest {

    private final AirTubes tubes = new AirTubes(24, 1.5, 0.041, 0.038, 50, 45e-6, 0.3);

    /** A worked rule of the trade: 24 tubes of 38 mm by 1.5 m are 4.3 m², 50 W/K at 12 W/(m² K), 2.5 kW over 50 K. */
    @Test
    void twentyFourTubesAreFiftyWattsPerKelvin() {
        assertThat(tubes.airSurface()).isCloseTo(4.3, within(0.01));
        assertThat(tubes.ua(12, 400)).isCloseTo(50, withinPercentage(2));
    }

    @Test
    void theAirFilmIsTheBottleneck() {
        double ua = tubes.ua(15, 400);
        assertThat(tubes.ua(30, 400) / ua).isGreaterThan(1.8);
        assertThat(tubes.ua(15, 800) / ua).isLessThan(1.05);
    }

    @Property
    void airNeverLeavesWarmerThanTheStore(@ForAll @DoubleRange(min = 0, max = 500) double capacityRate) {
        assertThat(AirTubes.conductance(50, capacityRate)).isBetween(0.0, Math.min(50, capacityRate));
    }

    /** By hand: 0.1 kg/s through 24 tubes is 3.06 m/s; ends 1.5 · ½ρv² = 8.4 Pa and friction of Re 7000. */
    @Test
    void theFanMustOvercomeTensOfPascal() {
        double loss = tubes.pressureLoss(0.1, 1.2, 1.8e-5);
        double speed = 0.1 / 1.2 / tubes.passage();
        double ends = 1.5 * 0.6 * speed * speed;
        assertThat(speed).isCloseTo(3.06, within(0.01));
        assertThat(loss - ends).isCloseTo(0.036 * 1.5 / 0.038 * 0.6 * speed * speed, withinPercentage(6));
        assertThat(tubes.pressureLoss(-0.1, 1.2, 1.8e-5)).isEqualTo(-loss);
    }

    @Test
    void warmTubesThatRiseDrawAirByThemselves() {
        double flow = tubes.naturalFlow(1.2, 1.05, 2e-5);
        assertThat(flow).isPositive();
        assertThat(tubes.naturalFlow(1.05, 1.2, 2e-5)).isNegative();
        assertThat(tubes.naturalFlow(1.1, 1.1, 2e-5)).isZero();
        double speed = flow / 1.05 / tubes.passage();
        double laminar = 32 * 2e-5 * 1.5 * speed / (0.038 * 0.038);
        assertThat(laminar + 1.5 * 1.05 / 2 * speed * speed).isCloseTo(9.80665 * 0.3 * 0.15, withinPercentage(1e-6));
    }

    @Test
    void levelTubesDrawNone() {
        assertThat(new AirTubes(24, 1.5, 0.041, 0.038, 50, 45e-6, 0).naturalFlow(1.2, 1.0, 2e-5))
                .isZero();
        assertThat(AirTubes.stillAirLeak(40, 0.15)).isCloseTo(6, within(1e-12));
    }
}
