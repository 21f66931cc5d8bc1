package stokewell.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Layer;
import stokewell.rig.Rigs;
import stokewell.rig.Store;

/** Insulation areas against sums done by hand. */
class WrapTest {

    private static Store wrapped(Store.Shape shape, double side, double lid, double base) {
        Store s = PlatesTest.store(shape, Store.Cover.SEALED, 0.005);
        return Changed.with(
                s, "shape", shape, "jacket", wool(side), "lid", wool(lid), "base", wool(base), "coil", null);
    }

    private static Layer wool(double thickness) {
        return Rigs.wool(thickness);
    }

    /**
     * A box of 1 x 1 x 1 m inside, 5 mm plate, 100 mm round it. By hand, outside of plate 1.01: middle of the wool
     * 4 x (1.01 + 0.1) x 1.01 = 4.4844 m²; its outside 4 x 1.21 x 1.01 = 4.8884; top 1.21² = 1.4641; under it 1.01² = 1.0201.
     */
    @Test
    void aBox() {
        List<Wrap> all = Wrap.of(wrapped(new Store.Shape.Square(1, 1, 1), 0.1, 0.15, 0.05));
        assertThat(all).extracting(Wrap::where).containsExactly("round the sides", "over the top", "under it");
        assertThat(all.get(0).area()).isCloseTo(4.4844, within(1e-9));
        assertThat(all.get(0).outer()).isCloseTo(4.8884, within(1e-9));
        assertThat(all.get(1).area()).isCloseTo(1.4641, within(1e-9));
        assertThat(all.get(2).area()).isCloseTo(1.0201, within(1e-9));
    }

    /** Area times thickness is the volume of the ring between two cylinders, exactly. */
    @Test
    void aRingHoldsItsVolume() {
        Wrap side =
                Wrap.of(wrapped(new Store.Shape.Round(0.8, 1.6), 0.12, 0, 0)).get(0);
        double d = 0.81;
        double ring = Math.PI / 4 * ((d + 0.24) * (d + 0.24) - d * d) * 1.61;
        assertThat(side.area() * 0.12).isCloseTo(ring, within(1e-12));
    }

    @Test
    void whatIsNotThereIsNotBought() {
        assertThat(Wrap.of(wrapped(new Store.Shape.Round(0.8, 1.6), 0.12, 0, 0)))
                .hasSize(1);
    }

    /** A lying barrel of 0.7 x 1.5 m in even wool: sides, upper and lower quarter together are the whole barrel. */
    @Test
    void aBarrelIsWrappedOnce() {
        List<Wrap> all = Wrap.of(wrapped(new Store.Shape.Lying(0.7, 1.5), 0.1, 0.1, 0.1));
        double barrel = Math.PI * (0.71 + 0.1) * 1.51;
        double heads = 2 * Math.PI / 4 * 0.71 * 0.71;
        assertThat(all.stream().mapToDouble(Wrap::area).sum()).isCloseTo(barrel + heads, within(1e-9));
    }
}
