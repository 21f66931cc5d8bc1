package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** ISO 13786, 24 h, films 0.13 and 0.04; expected values worked independently from the standard's definition. */
class AdmittanceTest {

    private static final double DAY = 86400;
    private static final double FILM = HeatFlow.HORIZONTAL.inside();

    static final Layer CONCRETE = Layer.of(0.2, 1.8, 2400, 1000);
    static final Layer BOARD = Layer.of(0.1, 0.04, 30, 1400);
    static final Layer RENDER = Layer.of(0.005, 1.0, 1200, 1500);
    static final Layer WOOD = Layer.of(0.02, 0.13, 500, 1600);

    @Test
    void bareConcrete() {
        Admittance y = Admittance.of(FILM, List.of(CONCRETE), HeatFlow.OUTSIDE, DAY);
        double u = Layers.u(FILM, List.of(CONCRETE), HeatFlow.OUTSIDE);
        assertThat(y.y11().size()).isCloseTo(5.704, withinPercentage(0.2));
        assertThat(y.y11().lead(DAY) / 3600).isCloseTo(0.95, within(0.01));
        assertThat(y.y22().size()).isCloseTo(11.592, withinPercentage(0.2));
        assertThat(y.y22().lead(DAY) / 3600).isCloseTo(1.87, within(0.01));
        assertThat(y.y12().size()).isCloseTo(1.827, withinPercentage(0.2));
        assertThat(-y.y12().lead(DAY) / 3600).isCloseTo(5.68, within(0.01));
        assertThat(u).isCloseTo(3.557, withinPercentage(0.2));
        assertThat(y.decrement(u)).isCloseTo(0.5136, withinPercentage(0.2));
        assertThat(y.kappa1() / 1000).isCloseTo(86.2, withinPercentage(0.2));
        assertThat(y.kappa2() / 1000).isCloseTo(170.9, withinPercentage(0.2));
    }

    @Test
    void concreteInAnOvercoat() {
        List<Layer> wall = List.of(CONCRETE, BOARD, RENDER);
        Admittance y = Admittance.of(FILM, wall, HeatFlow.OUTSIDE, DAY);
        double u = Layers.u(FILM, wall, HeatFlow.OUTSIDE);
        assertThat(y.y11().size()).isCloseTo(5.942, withinPercentage(0.2));
        assertThat(y.y22().size()).isCloseTo(0.847, withinPercentage(0.2));
        assertThat(y.y12().size()).isCloseTo(0.0606, withinPercentage(0.2));
        assertThat(-y.y12().lead(DAY) / 3600).isCloseTo(8.11, within(0.01));
        assertThat(u).isCloseTo(0.3589, withinPercentage(0.2));
        assertThat(y.decrement(u)).isCloseTo(0.1687, withinPercentage(0.2));
        assertThat(y.kappa1() / 1000).isCloseTo(82.3, withinPercentage(0.2));
        assertThat(y.kappa2() / 1000).isCloseTo(12.5, withinPercentage(0.5));
    }

    @Test
    void thinBoards() {
        Admittance y = Admittance.of(FILM, List.of(WOOD), HeatFlow.OUTSIDE, DAY);
        assertThat(y.y11().size()).isCloseTo(3.102, withinPercentage(0.2));
        assertThat(y.y12().size()).isCloseTo(3.082, withinPercentage(0.2));
        assertThat(-y.y12().lead(DAY) / 3600).isCloseTo(0.30, within(0.01));
    }

    /** A property of every transfer matrix. */
    @Test
    void determinantIsOne() {
        Admittance y = Admittance.of(FILM, List.of(CONCRETE, BOARD, RENDER), HeatFlow.OUTSIDE, DAY);
        assertThat(y.determinant().re()).isCloseTo(1, within(1e-9));
        assertThat(y.determinant().im()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aSlowEnoughSwingIsSteady() {
        double u = Layers.u(FILM, List.of(CONCRETE, BOARD), HeatFlow.OUTSIDE);
        Admittance y = Admittance.of(FILM, List.of(CONCRETE, BOARD), HeatFlow.OUTSIDE, 1e12);
        assertThat(y.y12().size()).isCloseTo(u, withinPercentage(0.01));
        assertThat(y.y11().size()).isCloseTo(u, withinPercentage(0.01));
    }
}
