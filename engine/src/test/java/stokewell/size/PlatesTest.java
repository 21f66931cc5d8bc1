package stokewell.size;

import static java.lang.Double.NaN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stokewell.rig.Changed;
import stokewell.rig.Layer;
import stokewell.rig.Materials;
import stokewell.rig.Metal;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.sheet.Stiffening;

/** Plates of tanks against sums done by hand. */
public class PlatesTest {

    /** Density of steel: 7800 kg/m³, ISO 10456:2007 table 3; EN 1991-1-1 table A.4 has 7850. */
    private static final double STEEL = 7800;

    public static Store store(Store.Shape shape, Store.Cover cover, double wall) {
        Store s = Rigs.store();
        return Changed.with(
                s, "shape", shape, "wall", new Layer(wall, "steel", 50, STEEL, 450), "cover", cover, "coil", null);
    }

    /**
     * 500 L, 1 m by 1 m by 0.5 m inside, of 3 mm. By hand: two plates of 1.006 x 1.006 (2.024072 m²), two walls of 0.5 x 1.006
     * (1.006 m²), two of 0.5 x 1 (1 m²): 4.030072 m² x 0.003 m x 7800 kg/m³ = 94.304 kg.
     */
    @Test
    void aClosedSquareTankOf500LitresWeighs94Kilos() {
        Store tank = store(new Store.Shape.Square(1, 1, 0.5), Store.Cover.SEALED, 0.003);
        assertThat(tank.shape().content()).isCloseTo(0.5, within(1e-12));
        assertThat(Plates.mass(tank)).isCloseTo(94.304, within(0.001));
        assertThat(Plates.of(tank))
                .containsExactly(
                        new Cut("bottom", 1, 1.006, 1.006, 0.003),
                        new Cut("long walls", 2, 0.5, 1.006, 0.003),
                        new Cut("short walls, between them", 2, 0.5, 1, 0.003),
                        new Cut("top", 1, 1.006, 1.006, 0.003));
    }

    /** The plates of a box fill exactly what lies between its outside and its inside. */
    @Test
    void thePlatesOfABoxLeaveNoGapAndNoOverlap() {
        Store tank = store(new Store.Shape.Square(1.2, 0.8, 1.5), Store.Cover.SEALED, 0.006);
        double metal = Plates.of(tank).stream().mapToDouble(Cut::volume).sum();
        assertThat(metal).isCloseTo(1.212 * 0.812 * 1.512 - 1.2 * 0.8 * 1.5, within(1e-12));
    }

    /** By hand: π x 0.803 m = 2.5227 m round the middle of a 3 mm wall on 800 mm; discs of 806 mm. */
    @Test
    void aRoundTankIsRolledAlongItsMiddleLine() {
        List<Cut> cuts = Plates.of(store(new Store.Shape.Round(0.8, 1.6), Store.Cover.SEALED, 0.003));
        assertThat(cuts.get(0)).isEqualTo(new Cut("bottom", 1, 0.806, 0, 0.003));
        assertThat(cuts.get(1).across()).isEqualTo(1.6);
        assertThat(cuts.get(1).along()).isCloseTo(2.5227, within(5e-5));
        assertThat(cuts.get(2).disc()).isTrue();
    }

    /** The same shell by the store's own geometry, worked out elsewhere for its losses. */
    @Test
    void theMassIsThatOfTheClosedShell() {
        double round = new stokewell.store.Shape.Round(0.8, 1.6).wallMass(0.003, STEEL);
        assertThat(Plates.mass(store(new Store.Shape.Round(0.8, 1.6), Store.Cover.SEALED, 0.003)))
                .isCloseTo(round, withinPercentage(1e-6));
        double lying = new stokewell.store.Shape.Lying(0.7, 1.5).wallMass(0.002, STEEL);
        assertThat(Plates.mass(store(new Store.Shape.Lying(0.7, 1.5), Store.Cover.SEALED, 0.002)))
                .isCloseTo(lying, withinPercentage(1e-6));
    }

    /** 1.5 m of water asks 75 mm of dry wall (5 %), 0.5 m asks the least of 50 mm. */
    @Test
    void anOpenTankHasDryWallAndNoTop() {
        Store deep = store(new Store.Shape.Square(1, 1, 1.5), Store.Cover.OPEN, 0.003);
        assertThat(Plates.inside(deep)).isCloseTo(1.575, within(1e-12));
        assertThat(Plates.of(deep)).hasSize(3).noneMatch(c -> c.what().contains("top"));
        assertThat(Plates.inside(store(new Store.Shape.Square(1, 1, 0.5), Store.Cover.FOAM, 0.003)))
                .isCloseTo(0.55, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Store.Cover.class)
    void onlyAClosedOrLooseTankHasAPlateOnTop(Store.Cover cover) {
        boolean top =
                Plates.of(store(new Store.Shape.Round(0.8, 1), cover, 0.003)).size() == 3;
        assertThat(top).isEqualTo(cover == Store.Cover.SEALED || cover == Store.Cover.LOOSE);
    }

    @Test
    void aTankOfPlasticIsNotCut() {
        Store s = store(new Store.Shape.Round(0.8, 1), Store.Cover.LOOSE, 0.003);
        Store plastic = Changed.with(s, "wall", new Layer(0.006, "polyethylene", 0.42, 940, 1900), "coil", null);
        assertThat(Plates.of(plastic)).isEmpty();
    }

    /** A steel wall in the file is a default; what the tank is said to be made of goes before it. */
    @Test
    void aTankThatIsSaidToBePlasticOrLinedIsNotCutFromSteel() {
        Rig steel = Rigs.hall();
        assertThat(Plates.metal(steel)).isTrue();
        assertThat(Stiffening.of(steel)).isNotEmpty();
        for (Metal soft : new Metal[] {Metal.PLASTIC, Metal.RUBBER}) {
            Materials m = new Materials(null, NaN, null, soft, NaN, null, null, NaN, NaN);
            Rig said = steel.secured(new Safety(null, null, null, null, null, null, null, m, null, null));
            assertThat(Plates.metal(said)).isFalse();
            assertThat(Stiffening.of(said)).isEmpty();
            assertThat(Weights.of(said)).anySatisfy(w -> {
                assertThat(w.part()).isEqualTo("tank");
                assertThat(w.empty()).isNaN();
            });
        }
    }
}
