package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The regression of wood over what drives it, against numbers that others published. */
class WoodLineTest {

    private static List<WoodRow> rows(double[] x, double[] y) {
        List<WoodRow> rows = new ArrayList<>();
        // no row is the neighbour of another: the data are no record in time
        for (int i = 0; i < x.length; i++) rows.add(new WoodRow(2 * i, new double[] {x[i]}, y[i]));
        return rows;
    }

    @Test
    void matchesTheCertifiedNorrisLine() {
        // NIST StRD, https://www.itl.nist.gov/div898/strd/lls/data/Norris.shtml, certified to 15 digits
        WoodLine l = WoodLine.of(rows(Published.NORRIS_X, Published.NORRIS_Y), Double.NEGATIVE_INFINITY);
        assertThat(l.flat()).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(l.slope()).isCloseTo(1.00211681802045, within(1e-13));
        assertThat(Math.sqrt(l.covariance().getEntry(0, 0))).isCloseTo(0.232818234301152, within(1e-11));
        assertThat(Math.sqrt(l.covariance().getEntry(1, 1))).isCloseTo(0.429796848199937e-3, within(1e-14));
        assertThat(l.error()).isCloseTo(0.884796396144373, within(1e-11));
        assertThat(l.explained()).isCloseTo(0.999993745883712, within(1e-14));
    }

    @Test
    void matchesThePublishedLinesOfTheHouseWithFilledWalls() {
        // Venables and Ripley, Modern Applied Statistics with S, data whiteside: intercept 6.8538 (0.1184), slope
        // -0.3932
        // (0.0196) before; after and more digits by numpy 2.4.6
        WoodLine before = walls(Published.WALLS_BEFORE);
        assertThat(before.flat()).isCloseTo(6.8538277, within(1e-6));
        assertThat(before.slope()).isCloseTo(0.39323882, within(1e-7));
        assertThat(Math.sqrt(before.covariance().getEntry(0, 0))).isCloseTo(0.11842341, within(1e-7));
        assertThat(Math.sqrt(before.covariance().getEntry(1, 1))).isCloseTo(0.01958601, within(1e-7));
        assertThat(before.error()).isCloseTo(0.28133373990643534, within(1e-9));
        assertThat(before.cvRmse()).isCloseTo(0.05922815576977586, within(1e-9));
        WoodLine after = walls(Published.WALLS_AFTER);
        assertThat(after.flat()).isCloseTo(4.72384967, within(1e-6));
        assertThat(after.slope()).isCloseTo(0.27793495, within(1e-7));
        assertThat(after.error()).isCloseTo(0.354848018370812, within(1e-9));
    }

    private static WoodLine walls(double[][] data) {
        double[] x = new double[data.length];
        double[] y = new double[data.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = -data[i][0];
            y[i] = data[i][1];
        }
        return WoodLine.of(rows(x, y), Double.NEGATIVE_INFINITY);
    }

    @Test
    void quantilesMatchThePrintedTableOfStudentsT() {
        // NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values, column 0.95 (printed to three decimals)
        double[][] table = {
            {1, 6.314},
            {2, 2.920},
            {3, 2.353},
            {5, 2.015},
            {10, 1.812},
            {15, 1.753},
            {20, 1.725},
            {30, 1.697},
            {60, 1.671},
            {100, 1.660}
        };
        for (double[] row : table) assertThat(WoodLine.quantile(row[0], 0.9)).isCloseTo(row[1], within(5.1e-4));
    }

    @Test
    void scatterIsToldWithTheParametersTakenOff() {
        // y 10 12 9 15 14 and their line by hand: slope 11/10, squares left 26 - 12.1
        WoodLine l = WoodLine.of(rows(new double[] {1, 2, 3, 4, 5}, new double[] {10, 12, 9, 15, 14}), -100);
        assertThat(l.mean()).isCloseTo(12, within(1e-12));
        assertThat(l.slope()).isCloseTo(1.1, within(1e-9));
        assertThat(l.error()).isCloseTo(Math.sqrt((26 - 12.1) / 3), within(1e-9));
        assertThat(l.cvRmse()).isCloseTo(Math.sqrt((26 - 12.1) / 3) / 12, within(1e-9));
    }

    @Test
    void findsABendWhereThereIsOneAndNoneWhereThereIsNone() {
        int found = 0;
        int imagined = 0;
        double sum = 0;
        for (int run = 0; run < 200; run++) {
            Random dice = new Random(run);
            List<WoodRow> bent = new ArrayList<>();
            List<WoodRow> straight = new ArrayList<>();
            for (int i = 0; i < 80; i++) {
                double x = 20 * dice.nextDouble();
                double e = 0.8 * dice.nextGaussian();
                bent.add(new WoodRow(i, new double[] {x}, 2 + Math.max(0, x - 6) + e));
                straight.add(new WoodRow(i, new double[] {x}, 2 + x + e));
            }
            WoodLine l = WoodLine.of(bent);
            if (l.parameters() == 3) {
                found++;
                sum += l.bend();
            }
            if (WoodLine.of(straight).parameters() == 3) imagined++;
        }
        assertThat(found).isGreaterThan(190);
        assertThat(sum / found).isCloseTo(6, within(0.15));
        // five in a hundred would be ten; the search over bends adds some
        assertThat(imagined).isLessThan(15);
    }

    @Test
    void aBendThatIsGivenIsTheBaseOfTheDegreeDays() {
        List<WoodRow> rows = new ArrayList<>();
        // two days a row: 4 and 0 degree-days under the bend of 10, though their mean is not beyond it
        for (int i = 0; i < 12; i++) rows.add(new WoodRow(i, new double[] {10 + i, 10 - i}, 3 + 2 * (i / 2.0)));
        WoodLine l = WoodLine.of(rows, 10);
        assertThat(l.flat()).isCloseTo(3, within(1e-9));
        assertThat(l.slope()).isCloseTo(2, within(1e-9));
    }

    @Test
    void likenessOfNeighboursIsFound() {
        double sum = 0;
        for (int run = 0; run < 100; run++) {
            Random dice = new Random(run);
            List<WoodRow> rows = new ArrayList<>();
            double e = dice.nextGaussian();
            for (int i = 0; i < 60; i++) {
                e = 0.5 * e + Math.sqrt(0.75) * dice.nextGaussian();
                double x = 10 + 4 * dice.nextGaussian();
                rows.add(new WoodRow(i, new double[] {x}, 5 + x + e));
            }
            sum += WoodLine.of(rows, Double.NEGATIVE_INFINITY).rho();
        }
        assertThat(sum / 100).isCloseTo(0.5, within(0.05));
    }
}
