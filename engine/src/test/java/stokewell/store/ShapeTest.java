package stokewell.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShapeTest {

    static Stream<Shape> shapes() {
        return Stream.of(new Shape.Round(0.85, 1.06), new Shape.Square(1.6, 1.2, 0.9), new Shape.Lying(0.9, 1.8));
    }

    /** 600 L, 0.85 m across: a rule of the trade's example. */
    @Test
    void aRoundStoreHoldsWhatTheBucketSays() {
        assertThat(new Shape.Round(0.85, 1.057).volume()).isCloseTo(0.600, withinPercentage(0.1));
        assertThat(new Shape.Square(1.6, 1.2, 0.9).volume()).isCloseTo(1.728, within(1e-12));
    }

    @Test
    void aLyingTankIsACircleOfWater() {
        Shape lying = new Shape.Lying(0.9, 1.8);
        double full = Math.PI / 4 * 0.81 * 1.8;
        assertThat(lying.volume()).isCloseTo(full, within(1e-12));
        assertThat(lying.volumeBelow(0.45)).isCloseTo(full / 2, within(1e-12));
        assertThat(lying.areaAt(0.45)).isCloseTo(0.9 * 1.8, within(1e-12));
        assertThat(lying.surface()).isCloseTo(Math.PI * 0.9 * 1.8 + 2 * Math.PI / 4 * 0.81, within(1e-12));
        assertThat(lying.topArea() + lying.bottomArea()).isZero();
    }

    /** Half a circle's centroid is 4r/3π from the middle: any handbook. */
    @Test
    void halfALyingTankHasItsCentroidWhereTheHandbookSays() {
        List<Slice> halves = new Shape.Lying(2, 1).slices(2);
        assertThat(halves.get(0).centroid()).isCloseTo(1 - 4 / (3 * Math.PI), within(1e-12));
        assertThat(halves.get(1).centroid()).isCloseTo(1 + 4 / (3 * Math.PI), within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void slicesAddUpToTheStore(Shape shape) {
        for (int n : new int[] {1, 2, 5, 12, 40}) {
            double volume = 0;
            double side = 0;
            double moment = 0;
            double z = 0;
            for (Slice s : shape.slices(n)) {
                assertThat(s.bottom()).isEqualTo(z);
                assertThat(s.volume()).isPositive();
                assertThat(s.centroid()).isBetween(s.bottom(), s.top());
                volume += s.volume();
                side += s.side();
                moment += s.volume() * s.centroid();
                z = s.top();
            }
            assertThat(z).isEqualTo(shape.height());
            assertThat(volume).isCloseTo(shape.volume(), withinPercentage(1e-10));
            assertThat(side + shape.topArea() + shape.bottomArea()).isCloseTo(shape.surface(), withinPercentage(1e-10));
            assertThat(moment / volume).isCloseTo(shape.height() / 2, withinPercentage(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void theCutIsTheSlopeOfTheVolume(Shape shape) {
        double h = 1e-6;
        for (double z = 0.05; z < 0.85; z += 0.1) {
            double slope = (shape.volumeBelow(z + h) - shape.volumeBelow(z - h)) / (2 * h);
            assertThat(shape.areaAt(z)).isCloseTo(slope, withinPercentage(1e-4));
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void levelIsTheInverseOfVolume(Shape shape) {
        assertThat(shape.level(shape.volumeBelow(0.37))).isCloseTo(0.37, within(1e-9));
        assertThat(shape.level(2 * shape.volume())).isEqualTo(shape.height());
        assertThat(shape.level(0)).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void aThinWallIsItsSurfaceTimesItsThickness(Shape shape) {
        assertThat(shape.wallMass(1e-6, 7800)).isCloseTo(shape.surface() * 1e-6 * 7800, withinPercentage(0.01));
        assertThat(shape.wallVolume(0.005)).isGreaterThan(shape.surface() * 0.005);
    }

    @Property
    void aPartFilledLyingTankAddsUp(
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double level, @ForAll @IntRange(min = 1, max = 30) int n) {
        Shape lying = new Shape.Lying(0.9, 1.8);
        double sum = 0;
        for (Slice s : lying.slices(n, level)) {
            sum += s.volume();
        }
        assertThat(sum).isCloseTo(lying.volumeBelow(level), withinPercentage(1e-9));
    }

    @Test
    void aFlatStoreIsRefused() {
        assertThatThrownBy(() -> new Shape.Round(0.8, 0)).hasMessageContaining("holds nothing");
        assertThatThrownBy(() -> new Shape.Round(0.8, 1).slices(3, 1.2)).hasMessageContaining("3 slices");
    }
}
