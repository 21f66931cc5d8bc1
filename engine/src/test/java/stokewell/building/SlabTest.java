package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlabTest {

    private static final double CLAY = 1.5;
    private static final double YEAR = 365 * 86400.0;

    /** Scottish Technical Handbook table 6.C C1: solid floors on clay, columns Rf 0, 0.5, 1, 1.5, 2; all 60 values. */
    @ParameterizedTest(name = "P/A {0}")
    @CsvSource({
        "0.05, 0.13, 0.11, 0.10, 0.09, 0.08",
        "0.10, 0.22, 0.18, 0.16, 0.14, 0.13",
        "0.15, 0.30, 0.24, 0.21, 0.18, 0.17",
        "0.20, 0.37, 0.29, 0.25, 0.22, 0.19",
        "0.25, 0.44, 0.34, 0.28, 0.24, 0.22",
        "0.30, 0.49, 0.38, 0.31, 0.27, 0.23",
        "0.35, 0.55, 0.41, 0.34, 0.29, 0.25",
        "0.40, 0.60, 0.44, 0.36, 0.30, 0.26",
        "0.45, 0.65, 0.47, 0.38, 0.32, 0.27",
        "0.50, 0.70, 0.50, 0.40, 0.33, 0.28",
        "0.55, 0.74, 0.52, 0.41, 0.34, 0.28",
        "0.60, 0.78, 0.55, 0.43, 0.35, 0.29"
    })
    void theTableOfTheRegulation(double perimeterByArea, double u0, double u1, double u2, double u3, double u4) {
        assertRow(perimeterByArea, 0.0051, u0, u1, u2, u3, u4);
    }

    /** The same formula worked to three places, the last row in part beyond dt = B′. */
    @ParameterizedTest(name = "P/A {0}")
    @CsvSource({
        "0.05, 0.126, 0.107, 0.096, 0.089, 0.083",
        "0.60, 0.783, 0.547, 0.425, 0.346, 0.292",
        "1.00, 1.051, 0.676, 0.495, 0.397, 0.331"
    })
    void theSameToThreePlaces(double perimeterByArea, double u0, double u1, double u2, double u3, double u4) {
        assertRow(perimeterByArea, 0.0006, u0, u1, u2, u3, u4);
    }

    private static void assertRow(double perimeterByArea, double tolerance, double... expected) {
        for (int i = 0; i < expected.length; i++) {
            double dt = Slab.equivalentThickness(0.3, CLAY, 0.5 * i);
            double u = Slab.u(Slab.characteristic(1, perimeterByArea), dt, CLAY);
            assertThat(u).as("Rf %s", 0.5 * i).isCloseTo(expected[i], within(tolerance));
        }
    }

    /** A workshop of 10 by 6 m on soil of 2.0 W/(m K), worked by hand. */
    @ParameterizedTest
    @CsvSource({"0, 0.913", "2.5, 0.269"})
    void aWorkshopFloor(double floor, double u) {
        double b = Slab.characteristic(60, 32);
        assertThat(Slab.u(b, Slab.equivalentThickness(0.3, 2.0, floor), 2.0)).isCloseTo(u, within(0.001));
    }

    /** √(λT/πρc), worked by hand; ISO 13370 rounds the first three to 2.2, 3.2, 4.2 m (from memory). */
    @ParameterizedTest
    @CsvSource({"1.5, 3.0e6, 365, 2.24", "2.0, 2.0e6, 365, 3.17", "3.5, 2.0e6, 365, 4.19"})
    void aYearSinksMetres(double conductivity, double heat, double days, double depth) {
        assertThat(Slab.penetration(conductivity, heat, days * 86400)).isCloseTo(depth, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"1.5, 3.0e6, 0.117", "1.8, 2.4e6, 0.1436", "0.13, 0.8e6, 0.0669"})
    void aDaySinksCentimetres(double conductivity, double heat, double depth) {
        assertThat(Slab.penetration(conductivity, heat, 86400)).isCloseTo(depth, withinPercentage(0.5));
    }

    @Test
    void edgeInsulationSavesAndDeepensWithDiminishingReturn() {
        double dt = Slab.equivalentThickness(0.3, CLAY, 0);
        double added = Slab.addedThickness(0.05 / 0.035, 0.05, CLAY);
        double half = Slab.uprightEdge(0.5, dt, added, CLAY);
        double whole = Slab.uprightEdge(1.0, dt, added, CLAY);
        assertThat(half).isNegative();
        assertThat(whole).isLessThan(half).isGreaterThan(2 * half);
        assertThat(Slab.flatEdge(1.0, dt, added, CLAY)).isEqualTo(half);
        assertThat(Slab.flatEdge(1.0, dt, 0, CLAY)).isZero();
        assertThat(Slab.loss(60, 0.9, 32, half)).isLessThan(54);
    }

    @Test
    void theYearsSwingIsLessThanTheBareSoilPath() {
        double dt = Slab.equivalentThickness(0.3, CLAY, 0);
        double sunk = Slab.penetration(CLAY, 3e6, YEAR);
        assertThat(Slab.yearlyOutside(32, CLAY, sunk, dt))
                .isCloseTo(0.37 * 32 * 1.5 * Math.log(sunk / dt + 1), within(1e-9));
        assertThat(Slab.yearlyInside(60, CLAY, sunk, dt)).isBetween(0.0, 60 * CLAY / dt);
    }
}
