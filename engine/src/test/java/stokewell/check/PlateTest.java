package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /**
     * Roark's Formulas for Stress and Strain, 7th ed., table 11.4 case 1a: stress beta q b2/t2, deflection alpha q b4/(E t3).
     * Its last digits are off by up to 0.5 % where Navier's series is exact.
     */
    @ParameterizedTest
    @CsvSource({
        "1.0, 0.2874, 0.0444",
        "1.2, 0.3762, 0.0616",
        "1.4, 0.4530, 0.0770",
        "1.6, 0.5172, 0.0906",
        "2.0, 0.6102, 0.1110",
        "3.0, 0.7134, 0.1335"
    })
    void hingedPlatesUnderEvenLoadMatchRoark(double ratio, double beta, double alpha) {
        Plate p = Plate.of(1, ratio, T, E, 1, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(p.stress() * T * T).isCloseTo(beta, withPercentage(0.3));
        assertThat(p.deflection() * E * T * T * T).isCloseTo(alpha, withPercentage(0.6));
    }

    /** Navier's double series, summed here: a hinged plate under water is exact to any digit. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 1.5", "2, 1", "0.5, 1.2", "3, 1"})
    void hingedWallsUnderWaterMatchNaviersSeries(double width, double height) {
        double deflection = 0;
        double moment = 0;
        for (int gx = 0; gx <= 20; gx++) {
            for (int gy = 0; gy <= 40; gy++) {
                double[] there = navier(width, height, width * gx / 40, height * gy / 40);
                deflection = Math.max(deflection, there[0]);
                moment = Math.max(moment, Math.max(there[1], there[2]));
            }
        }
        Plate p = Plate.of(width, height, T, E, 0, 1, Edge.SIMPLE, Edge.SIMPLE);
        assertThat(w(p)).isCloseTo(deflection, withPercentage(0.3));
        assertThat(m(p)).isCloseTo(moment, withPercentage(0.6));
    }

    /** Deflection times D and both bending moments for a pressure that grows from 0 at y = 0 to 1 at y = b. */
    private static double[] navier(double a, double b, double x, double y) {
        double w = 0;
        double mx = 0;
        double my = 0;
        for (int m = 1; m < 80; m += 2) {
            for (int n = 1; n < 80; n++) {
                double load = 8 / (Math.PI * Math.PI * m * n) * (n % 2 == 1 ? 1 : -1);
                double px = Math.pow(m * Math.PI / a, 2);
                double py = Math.pow(n * Math.PI / b, 2);
                double term =
                        load / Math.pow(px + py, 2) * Math.sin(m * Math.PI * x / a) * Math.sin(n * Math.PI * y / b);
                w += term;
                mx += term * (px + 0.3 * py);
                my += term * (py + 0.3 * px);
            }
        }
        return new double[] {w, mx, my};
    }

    /** Thirteen-point finite differences of the biharmonic equation, extrapolated: another method for held walls under water. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 1.5", "2, 1"})
    void heldWallsUnderWaterMatchFiniteDifferences(double width, double height) {
        double coarse = differences(width, height, 24);
        double fine = differences(width, height, 48);
        double exact = fine + (fine - coarse) / 3;
        Plate p = Plate.of(width, height, T, E, 0, 1, Edge.CLAMPED, Edge.CLAMPED);
        assertThat(w(p)).isCloseTo(exact, withPercentage(1));
    }

    /** Greatest deflection times D, by over-relaxation. */
    private static double differences(double a, double b, int n) {
        double hx = a / n;
        double hy = b / n;
        double x4 = 1 / Math.pow(hx, 4);
        double y4 = 1 / Math.pow(hy, 4);
        double xy = 1 / (hx * hx * hy * hy);
        int side = n + 5;
        double[][] w = new double[side][side];
        double centre = 6 * x4 + 6 * y4 + 8 * xy;
        double omega = 1.75;
        double change = 1;
        for (int turn = 0; turn < 60000 && change > 1e-13; turn++) {
            change = 0;
            for (int i = 3; i < n + 2; i++) {
                for (int j = 3; j < n + 2; j++) {
                    double load = (double) (j - 2) / n;
                    double sum = load
                            - x4 * (w[i - 2][j] + w[i + 2][j] - 4 * (w[i - 1][j] + w[i + 1][j]))
                            - y4 * (w[i][j - 2] + w[i][j + 2] - 4 * (w[i][j - 1] + w[i][j + 1]))
                            - 2 * xy * (w[i - 1][j - 1] + w[i + 1][j - 1] + w[i - 1][j + 1] + w[i + 1][j + 1])
                            + 4 * xy * (w[i - 1][j] + w[i + 1][j] + w[i][j - 1] + w[i][j + 1]);
                    double next = w[i][j] + omega * (sum / centre - w[i][j]);
                    change = Math.max(change, Math.abs(next - w[i][j]));
                    w[i][j] = next;
                }
            }
            // held edges: no slope, so the row outside mirrors the row inside
            for (int k = 0; k < side; k++) {
                w[1][k] = w[3][k];
                w[n + 3][k] = w[n + 1][k];
                w[k][1] = w[k][3];
                w[k][n + 3] = w[k][n + 1];
            }
        }
        double most = 0;
        for (double[] row : w) for (double v : row) most = Math.max(most, v);
        return most;
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
