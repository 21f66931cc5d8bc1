package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import stokewell.check.Plate.Edge;

/** Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (2nd ed.), tables 8, 25 and 35; Poisson 0.3. */
class PlateTest {

    private static final double E = 200e9;
    private static final double T = 0.001;
    private static final double D = E * T * T * T / 12 / (1 - 0.09);

    private static double w(Plate p) {
        return p.deflection() * D;
    }

    private static double m(Plate p) {
        return p.stress() * T * T / 6;
    }

    @Test
    void aHingedSquareUnderEvenLoadMatchesTable8() {
        Plate p = Plate.of(1, 1, T, E, 1, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(w(p)).isCloseTo(0.00406, withPercentage(0.2));
        assertThat(m(p)).isCloseTo(0.0479, withPercentage(0.2));
    }

    @Test
    void aHingedPlateTwiceAsLongMatchesTable8() {
        Plate p = Plate.of(1, 2, T, E, 1, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(w(p)).isCloseTo(0.01013, withPercentage(0.2));
        assertThat(m(p)).isCloseTo(0.1017, withPercentage(0.2));
    }

    @Test
    void aHingedSquareUnderWaterBendsHalfAsMuchAtItsMiddle() {
        // by symmetry the middle of a triangular load bends half of the even one: 0.00203; the greatest lies a hair
        // lower
        Plate p = Plate.of(1, 1, T, E, 0, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(w(p)).isBetween(0.00203, 0.00207);
    }

    @Test
    void aLongHingedWallUnderWaterIsABeam() {
        // beam under a triangular load: 0.00652 and 0.0642 = 1/(9√3)
        Plate p = Plate.of(6, 1, T, E, 0, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(w(p)).isCloseTo(0.00652, withPercentage(1));
        assertThat(m(p)).isCloseTo(1 / (9 * Math.sqrt(3)), withPercentage(1));
    }

    @Test
    void aClampedSquareUnderEvenLoadMatchesTable35() {
        Plate p = Plate.of(1, 1, T, E, 1, 1, Edge.CLAMPED, Edge.CLAMPED);
        assertThat(w(p)).isCloseTo(0.00126, withPercentage(0.6));
        assertThat(m(p)).isCloseTo(0.0513, withPercentage(0.3));
    }

    @Test
    void aClampedSquareUnderWaterMatchesItsTable() {
        // bottom edge -0.0334, middle 0.00063 (the greatest deflection lies a little below the middle)
        Plate p = Plate.of(1, 1, T, E, 0, 1, Edge.CLAMPED, Edge.CLAMPED);
        assertThat(m(p)).isCloseTo(0.0334, withPercentage(0.5));
        assertThat(w(p)).isBetween(0.00063, 0.00066);
    }

    @Test
    void aWallWithAFreeRimMatchesTable25() {
        Plate square = Plate.of(1, 1, T, E, 1, 1, Edge.SIMPLE, Edge.FREE);
        assertThat(w(square)).isCloseTo(0.01286, withPercentage(0.3));
        assertThat(m(square)).isCloseTo(0.112, withPercentage(0.5));
        Plate tall = Plate.of(1, 2, T, E, 1, 1, Edge.SIMPLE, Edge.FREE);
        assertThat(w(tall)).isCloseTo(0.01507, withPercentage(0.3));
        assertThat(m(tall)).isCloseTo(0.132, withPercentage(0.5));
    }

    @Test
    void stressGoesWithTheSquareOfTheThickness() {
        Plate thin = Plate.of(1.2, 1.1, 0.003, E, 0, 11000, Edge.CLAMPED, Edge.FREE);
        Plate thick = Plate.of(1.2, 1.1, 0.006, E, 0, 11000, Edge.CLAMPED, Edge.FREE);
        assertThat(thin.stress() / thick.stress()).isCloseTo(4, offset(1e-6));
        assertThat(thin.deflection() / thick.deflection()).isCloseTo(8, offset(1e-6));
    }
}
