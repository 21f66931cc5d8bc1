package stokewell.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import stokewell.check.FlatWall;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Store;
import stokewell.size.PlatesTest;

class StiffeningTest {

    private static final double G = 9.80665;

    private static Rig tank(Store.Shape shape, double wall) {
        Rig p = Rigs.pumped();
        return Changed.with(p, "store", PlatesTest.store(shape, Store.Cover.LOOSE, wall));
    }

    /** The moment of a simple beam under water, by summing its load in a thousand slices. */
    @Test
    void theUprightIsBentAsTheBeamTableSays() {
        double h = 1.5;
        double span = 0.4;
        double most = 0;
        int n = 1000;
        // reaction at the top of a load that rises to the foot: a sixth of w h
        double top = 1000 * G * h * span * h / 6;
        for (int i = 0; i <= n; i++) {
            double x = h * i / n;
            double moment = top * x;
            for (int k = 0; k < i; k++) {
                double at = h * (k + 0.5) / n;
                moment -= 1000 * G * at * span * h / n * (x - at);
            }
            most = Math.max(most, moment);
        }
        assertThat(Stiffening.bending(span, h, 0)).isCloseTo(most, withinPercentage(0.1));
    }

    /** Even load: w h²/8. By hand for 1 m of level over a wall 1 m high and 1 m wide: 9806.65/8 = 1226 N m more. */
    @Test
    void aLevelOverTheTopAddsAnEvenLoad() {
        assertThat(Stiffening.bending(1, 1, 1) - Stiffening.bending(1, 1, 0)).isCloseTo(1225.8, within(0.1));
    }

    @Test
    void aRoundTankNeedsNone() {
        assertThat(Stiffening.of(tank(new Store.Shape.Round(0.8, 1.6), 0.003))).isEmpty();
    }

    /** A shoebox of thick plate stands by itself; the same of thin plate, or deeper, does not. */
    @Test
    void thinnerOrDeeperAsksForMore() {
        int thick = Stiffening.of(tank(new Store.Shape.Square(0.5, 0.5, 0.4), 0.006))
                .get(0)
                .panels();
        int thin = Stiffening.of(tank(new Store.Shape.Square(1.2, 1.2, 1.5), 0.004))
                .get(0)
                .panels();
        int deep = Stiffening.of(tank(new Store.Shape.Square(1.2, 1.2, 2.2), 0.004))
                .get(0)
                .panels();
        assertThat(thick).isEqualTo(1);
        assertThat(thin).isGreaterThan(1);
        assertThat(deep).isGreaterThanOrEqualTo(thin);
    }

    /** The bar that is named has the modulus that is asked: b h²/6 of a flat bar on edge. */
    @Test
    void theBarNamedIsStrongEnough() {
        for (Stiffening s : Stiffening.of(tank(new Store.Shape.Square(1.0, 1.6, 1.5), 0.004))) {
            assertThat(s.found()).isTrue();
            assertThat(s.gauge() * s.bar() * s.bar() / 6).isGreaterThanOrEqualTo(s.modulus());
            assertThat(Stiffening.bending(s.span(), 1.5, 0) / s.modulus())
                    .isCloseTo(FlatWall.ALLOWED, withinPercentage(1e-6));
            assertThat(s.span() * s.panels()).isIn(1.0, 1.6);
        }
    }

    @Test
    void longAndShortWallsAreToldApart() {
        assertThat(Stiffening.of(tank(new Store.Shape.Square(1.0, 1.6, 1.5), 0.004)))
                .extracting(Stiffening::wall)
                .containsExactly("long walls", "short walls");
        assertThat(Stiffening.of(tank(new Store.Shape.Square(1.2, 1.2, 1.5), 0.004)))
                .extracting(Stiffening::wall)
                .containsExactly("all four walls");
    }
}
