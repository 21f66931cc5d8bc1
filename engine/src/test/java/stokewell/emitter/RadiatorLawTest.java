package stokewell.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadiatorLawTest {

    private final RadiatorLaw radiator = new RadiatorLaw(2000, 1.3);

    /** EN 442 correction factors, n = 1.3, as printed at buildingservicesindex.co.uk. */
    @ParameterizedTest
    @CsvSource({
        "5, 0.050",
        "10, 0.123",
        "15, 0.209",
        "20, 0.304",
        "25, 0.406",
        "30, 0.515",
        "35, 0.629",
        "40, 0.748",
        "45, 0.872",
        "50, 1.000",
        "55, 1.132",
        "60, 1.267",
        "65, 1.406",
        "70, 1.549",
        "75, 1.694"
    })
    void correctionFactorsOfTheTrade(double excess, double factor) {
        assertThat(RadiatorLaw.factor(excess, 1.3)).isCloseTo(factor, within(0.001));
        assertThat(radiator.power(excess)).isCloseTo(2000 * factor, within(2.0));
    }

    /** Log means of the rated regimes, worked by hand; 55/45 gives 0.5107 of 75/65. */
    @Test
    void logMeansOfTheUsualRegimes() {
        assertThat(RadiatorLaw.logMean(75, 65, 20)).isCloseTo(49.833, within(0.001));
        assertThat(RadiatorLaw.logMean(90, 70, 20)).isCloseTo(59.440, within(0.001));
        assertThat(RadiatorLaw.logMean(55, 45, 20)).isCloseTo(29.720, within(0.001));
        double ratio =
                radiator.power(RadiatorLaw.logMean(55, 45, 20)) / radiator.power(RadiatorLaw.logMean(75, 65, 20));
        assertThat(ratio).isCloseTo(0.5107, within(0.001));
    }

    @Test
    void logMeanIsSmoothWhereNothingCools() {
        assertThat(RadiatorLaw.logMean(60, 60, 20)).isEqualTo(40);
        assertThat(RadiatorLaw.logMean(60.0799, 59.9201, 20))
                .isCloseTo(RadiatorLaw.logMean(60.0801, 59.9199, 20), within(1e-6));
        assertThat(RadiatorLaw.logMean(60, 20, 20)).isZero();
    }

    @Test
    void cooledStoreGivesNoHeatToARadiator() {
        assertThat(radiator.power(0)).isZero();
        assertThat(radiator.power(-15)).isZero();
        assertThat(radiator.powerSlope(-15)).isZero();
        assertThat(radiator.powerAlong(-15, 100)).isZero();
    }

    @Property
    void slopesAreTheDerivatives(
            @ForAll @DoubleRange(min = 0.01, max = 80) double excess,
            @ForAll @DoubleRange(min = 5, max = 2000) double flow) {
        double h = 1e-5;
        assertThat(radiator.powerSlope(excess))
                .isCloseTo((radiator.power(excess + h) - radiator.power(excess - h)) / (2 * h), within(2e-3));
        double along = (radiator.powerAlong(excess + h, flow) - radiator.powerAlong(excess - h, flow)) / (2 * h);
        assertThat(radiator.powerAlongSlope(excess, flow)).isCloseTo(along, within(2e-3));
    }

    @Property
    void warmerWaterNeverGivesLess(@ForAll @DoubleRange(min = -5, max = 80) double excess) {
        assertThat(radiator.power(excess + 0.01)).isGreaterThanOrEqualTo(radiator.power(excess));
        assertThat(radiator.powerAlong(excess + 0.01, 80)).isGreaterThanOrEqualTo(radiator.powerAlong(excess, 80));
    }

    /** Rated at 75/65/20: 200 W/K of water cools by 10 K and gives what the arithmetic rating says, within 1 %. */
    @Test
    void waterThatCoolsAlongGivesTheRating() {
        assertThat(radiator.powerAlong(55, 200)).isCloseTo(2000, withinPercentage(1));
    }

    @Test
    void plentyOfWaterIsWaterAtOneTemperature() {
        assertThat(radiator.powerAlong(50, 1e9)).isCloseTo(2000, withinPercentage(0.001));
        assertThat(radiator.powerAlong(50, 1e-6)).isCloseTo(50e-6, withinPercentage(1));
    }

    /** Exponent 1 is Newton's cooling: 1 − e^−NTU. */
    @Test
    void exponentOneIsAnOrdinaryExchanger() {
        RadiatorLaw linear = new RadiatorLaw(2000, 1);
        assertThat(linear.powerAlong(50, 40)).isCloseTo(40 * 50 * (1 - Math.exp(-1)), within(1e-9));
    }
}
