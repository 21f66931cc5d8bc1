package stokewell.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.loop.PipeSize;
import stokewell.matter.Water;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

class WeightsTest {

    /** ASME B36.10M schedule 40, outside and wall in mm, mass of the bare pipe in kg/m: its table, masses from memory. */
    @ParameterizedTest(name = "{0} in")
    @CsvSource({
        "1/2, 21.3, 2.77, 1.27",
        "3/4, 26.7, 2.87, 1.69",
        "1, 33.4, 3.38, 2.50",
        "1 1/4, 42.2, 3.56, 3.39",
        "1 1/2, 48.3, 3.68, 4.05",
        "2, 60.3, 3.91, 5.44"
    })
    void aMetreOfSteelPipeWeighsWhatItsStandardSays(String size, double outer, double wall, double mass) {
        assertThat(Weights.pipe((outer - 2 * wall) / 1000, wall / 1000)).isCloseTo(mass, within(0.006));
    }

    /** ASME B36.10M, 1 in schedule 40: bore 26.64 mm, 0.557 L/m by hand (π/4 x 0.2664² dm² x 10 dm). */
    @Test
    void aMetreOfOneInchPipeHoldsHalfALitre() {
        PipeSize inch = PipeSize.named("1 in steel").orElseThrow();
        assertThat(1000 * Weights.content(inch.inner())).isCloseTo(0.557, within(0.0005));
    }

    /** 999.7 kg/m³ at 10 °C: IAPWS-95 tables; and our own water. */
    @Test
    void coldWaterIsAlmostAKiloALitre() {
        assertThat(Weights.WATER).isCloseTo(Water.density(283.15), within(0.05));
    }

    /** By hand: π/4 x 0.8² x 1.6 = 0.80425 m³, 804.0 kg cold; shell of 4 mm by its plates; coil 4 L, 12 kg. */
    @Test
    void theTankStandsWithItsWater() {
        Rig rig = Rigs.pumped();
        Weights tank = find(rig, "tank");
        assertThat(tank.water()).isCloseTo(0.80425, within(1e-5));
        assertThat(tank.full() - tank.empty()).isCloseTo(804.0, within(0.05));
        assertThat(find(rig, "coil")).isEqualTo(new Weights("coil", 0.004, 12));
    }

    @ParameterizedTest
    @MethodSource("stokewell.rig.Rigs#all")
    void everyLitreIsCountedOnce(Rig rig) {
        double parts = Weights.of(rig).stream().mapToDouble(Weights::water).sum();
        assertThat(Weights.water(rig)).isCloseTo(parts, withinPercentage(1e-9));
        assertThat(Weights.of(rig)).allSatisfy(w -> assertThat(w.full()).isGreaterThan(0));
        if (rig.store() == null) assertThat(parts).isZero();
    }

    private static Weights find(Rig rig, String part) {
        return Weights.of(rig).stream()
                .filter(w -> w.part().equals(part))
                .findFirst()
                .orElseThrow();
    }
}
