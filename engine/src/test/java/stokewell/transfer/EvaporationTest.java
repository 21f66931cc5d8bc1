package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvaporationTest {

    /** The pool formula on an open tank in a room of 20 °C, half humid: the trade's 1.7 and 4 kW/m2; two digits. */
    @ParameterizedTest
    @CsvSource({"60, 1700", "80, 4000"})
    void anOpenTankLosesWhatThePoolFormulaSays(double celsius, double watt) {
        double water = celsius + 273.15;
        double rate = Evaporation.carrier(water, 293.15, 0.5, 0);
        assertThat(Evaporation.heat(rate, water)).isCloseTo(watt, withinPercentage(5));
    }

    /** Shah (2002) finds the pool formula low on hot water; the two stay as close as the class says. */
    @ParameterizedTest
    @CsvSource({"60, 1.20", "80, 1.40"})
    void convectionGivesMoreOnHotWater(double celsius, double atMost) {
        double water = celsius + 273.15;
        double ratio = Evaporation.shah(water, 293.15, 0.5, 101325) / Evaporation.carrier(water, 293.15, 0.5, 0);
        assertThat(ratio).isBetween(1.0, atMost);
    }

    /** Heat and mass pass alike (Lewis number near 1): Sh = 0.15 Ra^1/3 on a hot face up, worked by hand at 60 °C with
     *  D 2.9e-5 m2/s: 3.0 kg/(h m2), before the drift of the vapour itself; Shah's deviation is 18 %. */
    @Test
    void shahIsNearTheAnalogyOfHeatAndMass() {
        assertThat(3600 * Evaporation.shah(333.15, 293.15, 0.5, 101325)).isCloseTo(3.0, withinPercentage(18));
    }

    @Test
    void aLitreGoneIsTwoThirdsOfAKilowattHour() {
        assertThat(Evaporation.heat(1, 343.15) / 3.6e6).isCloseTo(0.64, withinPercentage(2));
    }

    @Property(tries = 200)
    void hotterWaterAndDrierAirEvaporateMore(
            @ForAll @DoubleRange(min = 275, max = 365) double water,
            @ForAll @DoubleRange(min = 0, max = 0.9) double humidity) {
        double rate = Evaporation.shah(water, 293.15, humidity, 101325);
        assertThat(rate).isNotNegative();
        assertThat(Evaporation.shah(water + 1, 293.15, humidity, 101325)).isGreaterThanOrEqualTo(rate);
        assertThat(Evaporation.shah(water, 293.15, humidity + 0.1, 101325)).isLessThanOrEqualTo(rate + 1e-12);
    }
}
