package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import stokewell.building.Leakage.Shelter;

class LeakageTest {

    private final Leakage leak = Leakage.of(0.05, 2, Shelter.SOME_OBSTACLES);

    /** ASHRAE Handbook of Fundamentals, example of the basic model, from memory: 500 cm², 38.6 K, 6.7 m/s. */
    @Test
    void theHandbooksHouse() {
        double q = leak.flow(20, 20 - 38.6, 6.7);
        assertThat(q).isCloseTo(0.0734, withinPercentage(0.2));
        assertThat(q * 3600 / 340).isCloseTo(0.78, within(0.005));
    }

    /** Persily (1982), Meier: 15 changes at 50 Pa are 0.75 by themselves. */
    @Test
    void theRuleOfTwenty() {
        assertThat(Leakage.seasonalChanges(15)).isEqualTo(0.75);
    }

    @Test
    void theBlowerDoorGoesThereAndBack() {
        double area = Leakage.areaFrom(10, 200, 1.2);
        assertThat(Leakage.changesAt50(area, 200, 1.2)).isCloseTo(10, within(1e-9));
        assertThat(area * 1e4).isBetween(350.0, 450.0);
    }

    /** An average winter of the rule of twenty and the basic model are the same sort of number. */
    @Test
    void bothRulesAreNeighbours() {
        double area = Leakage.areaFrom(10, 300, 1.2);
        double q = Leakage.of(area, 1, Shelter.SOME_OBSTACLES).flow(20, 5, 3.5);
        assertThat(q * 3600 / 300).isBetween(0.25, 0.75);
    }

    @Property
    void flowIsEvenInTheDifferenceAndItsSlopeIsTheDerivative(
            @ForAll @DoubleRange(min = -40, max = 40) double dt, @ForAll @DoubleRange(min = 0, max = 15) double wind) {
        double h = 1e-4;
        double slope = (leak.flow(dt + h, 0, wind) - leak.flow(dt - h, 0, wind)) / (2 * h);
        assertThat(leak.flowByInside(dt, 0, wind)).isCloseTo(slope, within(1e-7));
        assertThat(leak.flow(dt, 0, wind)).isCloseTo(leak.flow(0, dt, wind), within(1e-15));
    }

    @Test
    void stillAndEvenAirHardlyMoves() {
        assertThat(leak.flow(10, 10, 0)).isBetween(0.0, 0.001);
        assertThat(leak.flowByInside(10, 10, 0)).isZero();
    }

    @Property
    void colderOrWindierNeverLeaksLess(
            @ForAll @DoubleRange(min = 0, max = 50) double dt, @ForAll @DoubleRange(min = 0, max = 15) double wind) {
        assertThat(leak.flow(dt + 1, 0, wind)).isGreaterThan(leak.flow(dt, 0, wind));
        assertThat(leak.flow(dt, 0, wind + 0.5)).isGreaterThan(leak.flow(dt, 0, wind));
    }

    @Test
    void aTowerIsRefused() {
        assertThatThrownBy(() -> Leakage.of(0.05, 7, Shelter.OPEN)).hasMessageContaining("storeys");
    }
}
