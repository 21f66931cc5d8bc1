package stokewell.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class NodesTest {

    private static final double IN = HeatFlow.HORIZONTAL.inside();
    private static final double OUT = HeatFlow.OUTSIDE;

    static Stream<Arguments> walls() {
        Layer concrete = AdmittanceTest.CONCRETE;
        Layer board = AdmittanceTest.BOARD;
        Layer render = AdmittanceTest.RENDER;
        Layer wood = AdmittanceTest.WOOD;
        Layer wool = Layer.of(0.14, 0.04, 20, 1030);
        Layer plaster = Layer.of(0.0125, 0.21, 700, 1000);
        Layer brick = Layer.of(0.102, 0.77, 1700, 840);
        Layer log = Layer.of(0.2, 0.13, 500, 1600);
        return Stream.of(
                Arguments.of("concrete", List.of(concrete), 0.01),
                Arguments.of("concrete in an overcoat", List.of(concrete, board, render), 0.012),
                Arguments.of("concrete insulated inside", List.of(plaster, board, concrete), 0.02),
                Arguments.of("boards", List.of(wood), 0.01),
                Arguments.of("framed", List.of(plaster, wool, wood), 0.01),
                Arguments.of("brick veneer", List.of(plaster, wool, wood, Layer.gap(0.18), brick), 0.03),
                Arguments.of("log", List.of(log), 0.07),
                Arguments.of("brick and half", List.of(plaster, Layer.of(0.33, 0.77, 1700, 840)), 0.04));
    }

    /** Against the exact transfer matrix; the bounds are those that the class states. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void fourNodesAnswerADayLikeTheExactWall(String name, List<Layer> wall, double bound) {
        Nodes nodes = Nodes.split(4, wall, IN, OUT);
        assertThat(nodes.error()).isLessThanOrEqualTo(bound);
        Admittance is = nodes.admittance(IN, OUT, 86400);
        Admittance exact = Admittance.of(IN, wall, OUT, 86400);
        assertThat(is.y11().size()).isCloseTo(exact.y11().size(), withinPercentage(4));
        assertThat(is.y22().size()).isCloseTo(exact.y22().size(), withinPercentage(4));
    }

    /** Five days, the length of a cold snap. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void fourNodesAnswerAColdSnapLikeTheExactWall(String name, List<Layer> wall, double bound) {
        Admittance is = Nodes.split(4, wall, IN, OUT).admittance(IN, OUT, 5 * 86400);
        Admittance exact = Admittance.of(IN, wall, OUT, 5 * 86400);
        assertThat(is.y11().size()).isCloseTo(exact.y11().size(), withinPercentage(2));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void nothingIsLostInTheSplit(String name, List<Layer> wall, double bound) {
        for (int n = 1; n <= Nodes.MOST; n++) {
            Nodes nodes = Nodes.split(n, wall, IN, OUT);
            double r = nodes.resistance(n);
            double c = 0;
            for (int i = 0; i < n; i++) {
                assertThat(nodes.resistance(i)).isPositive();
                assertThat(nodes.capacity(i)).isPositive();
                r += nodes.resistance(i);
                c += nodes.capacity(i);
            }
            assertThat(r).isCloseTo(wall.stream().mapToDouble(Layer::resistance).sum(), within(1e-9));
            assertThat(c).isCloseTo(wall.stream().mapToDouble(Layer::capacity).sum(), within(1e-6));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void oneMoreNodeIsNeverMuchWorse(String name, List<Layer> wall, double bound) {
        double before = Nodes.split(1, wall, IN, OUT).error();
        for (int n = 2; n <= Nodes.MOST; n++) {
            double now = Nodes.split(n, wall, IN, OUT).error();
            assertThat(now).isLessThan(before + 0.005);
            before = now;
        }
    }

    @Test
    void insulationBecomesResistanceBetweenMasses() {
        Layer board = AdmittanceTest.BOARD;
        Nodes nodes = Nodes.split(2, List.of(AdmittanceTest.CONCRETE, board, AdmittanceTest.CONCRETE), IN, OUT);
        assertThat(nodes.resistance(1)).isCloseTo(board.resistance(), withinPercentage(10));
        assertThat(nodes.capacity(0)).isCloseTo(nodes.capacity(1), withinPercentage(30));
    }

    @Test
    void aWallThatHoldsNothingHasNoNode() {
        Nodes nodes = Nodes.within(0.02, List.of(Layer.gap(0.4), Layer.gap(0.1)), IN, OUT);
        assertThat(nodes.count()).isZero();
        assertThat(nodes.resistance(0)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void thinWallsNeedOneNode() {
        assertThat(Nodes.within(0.02, List.of(AdmittanceTest.WOOD), IN, OUT).count())
                .isEqualTo(1);
    }

    @Property(tries = 25)
    void anyConcreteWallComesWithinThreePerCent(
            @ForAll @DoubleRange(min = 0.02, max = 0.3) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.2) double insulation) {
        List<Layer> wall = List.of(Layer.of(thickness, 1.8, 2400, 1000), Layer.of(insulation, 0.035, 30, 1450));
        assertThat(Nodes.within(0.02, wall, IN, OUT).error()).isLessThan(0.03);
    }
}
