package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Incropera: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th ed. (2007). */
class ExchangerTest {

    /** Kays and London's formulas recomputed; (5, 0.7) also in the open library ht. Six digits. */
    @ParameterizedTest(name = "NTU {0}, C {1}")
    @CsvSource({
        "1, 0.5, 0.564733, 0.517913, 0.544764, 0.547490, 0.541969, 0.544764",
        "2, 1, 0.666667, 0.490842, 0.615407, 0.614247, 0.578807, 0.578807",
        "3, 0.75, 0.817118, 0.568430, 0.755313, 0.749406, 0.679549, 0.696630",
        "5, 0.7, 0.920670, 0.588116, 0.844480, 0.844482, 0.715810, 0.749784",
        "1, 1, 0.500000, 0.432332, 0.468536, 0.476222, 0.468536, 0.468536",
        "1, 0, 0.632121, 0.632121, 0.632121, 0.632121, 0.632121, 0.632121"
    })
    void effectivenessIsThatOfKaysAndLondon(
            double ntu,
            double c,
            double counter,
            double parallel,
            double cross,
            double exact,
            double greater,
            double lesser) {
        assertThat(Exchanger.counter(ntu, c)).isCloseTo(counter, within(1e-6));
        assertThat(Exchanger.parallel(ntu, c)).isCloseTo(parallel, within(1e-6));
        assertThat(Exchanger.crossUnmixed(ntu, c)).isCloseTo(cross, within(1e-6));
        assertThat(Exchanger.crossUnmixedExact(ntu, c)).isCloseTo(exact, within(1e-6));
        assertThat(Exchanger.crossGreaterMixed(ntu, c)).isCloseTo(greater, within(1e-6));
        assertThat(Exchanger.crossLesserMixed(ntu, c)).isCloseTo(lesser, within(1e-6));
    }

    /** Incropera example 11.1: oil and water in a double pipe; effectiveness 0.5714 at C 0.2550 needs 0.9259 units. */
    @Test
    void counterflowUnitsAreThoseOfTheExample() {
        assertThat(Exchanger.counterUnits(0.5714, 0.2550)).isCloseTo(0.9259, withinPercentage(0.1));
    }

    /** The same example in the documentation of the open library ht: oil 100 to 60 °C, water 30 to 40.2 °C. */
    @Test
    void logMeanDifferenceIsThatOfTheExample() {
        assertThat(Exchanger.logMeanDifference(100 - 40.2, 60 - 30)).isCloseTo(43.200409, within(1e-5));
        assertThat(Exchanger.logMeanDifference(100 - 30, 60 - 40.2)).isCloseTo(39.752512, within(1e-5));
    }

    /** Radiators, EN 442: 75/65/20 49.833 K; 90/70/20 59.440 K; 55/45/20 29.720 K. */
    @Test
    void radiatorsHaveTheirLogMeanExcess() {
        assertThat(Exchanger.logMeanDifference(55, 45)).isCloseTo(49.833, within(0.001));
        assertThat(Exchanger.logMeanDifference(70, 50)).isCloseTo(59.440, within(0.001));
        assertThat(Exchanger.logMeanDifference(35, 25)).isCloseTo(29.720, within(0.001));
        assertThat(Exchanger.logMeanDifference(10, 10 + 1e-9)).isCloseTo(10, within(1e-8));
    }

    /** Incropera examples 11.3 and 11.4; charts in the book, so the formulas' own values: exact 2.081 units, 0.8358. */
    @Test
    void crossflowIsThatOfTheExamples() {
        assertThat(Exchanger.crossUnmixedExact(2.081, 0.45)).isCloseTo(0.7547, within(2e-4));
        assertThat(Exchanger.crossUnmixed(2.024, 0.45)).isCloseTo(0.7547, within(2e-4));
        assertThat(Exchanger.crossUnmixed(2.667, 0.357)).isCloseTo(0.8445, within(2e-4));
        assertThat(Exchanger.crossUnmixedExact(2.667, 0.357)).isCloseTo(0.8358, within(2e-4));
    }

    @Property(tries = 300)
    void counterflowIsBestAndParallelFlowIsWorst(
            @ForAll @DoubleRange(min = 0.01, max = 20) double ntu, @ForAll @DoubleRange(min = 0, max = 1) double c) {
        double best = Exchanger.counter(ntu, c) + 1e-12;
        double worst = Exchanger.parallel(ntu, c) - 1e-12;
        assertThat(Exchanger.crossUnmixedExact(ntu, c)).isBetween(worst, best);
        assertThat(Exchanger.crossGreaterMixed(ntu, c)).isBetween(worst, best);
        assertThat(Exchanger.crossLesserMixed(ntu, c)).isBetween(worst, best);
        assertThat(best).isLessThanOrEqualTo(1 + 1e-12);
    }

    @Property(tries = 200)
    void nothingJumpsWhereTheFormulasTurnSingular(@ForAll @DoubleRange(min = 0.05, max = 10) double ntu) {
        assertThat(Exchanger.counter(ntu, 1 - 2e-9)).isCloseTo(Exchanger.counter(ntu, 1), within(1e-7));
        assertThat(Exchanger.crossUnmixedExact(ntu, 2e-9)).isCloseTo(Exchanger.isothermal(ntu), within(1e-6));
        assertThat(Exchanger.crossUnmixed(ntu, 2e-9)).isCloseTo(Exchanger.isothermal(ntu), within(1e-6));
        assertThat(Exchanger.crossGreaterMixed(ntu, 2e-9)).isCloseTo(Exchanger.isothermal(ntu), within(1e-6));
        assertThat(Exchanger.crossLesserMixed(ntu, 2e-9)).isCloseTo(Exchanger.isothermal(ntu), within(1e-6));
    }

    @Property(tries = 200)
    void counterUnitsUndoCounterflow(
            @ForAll @DoubleRange(min = 0.05, max = 5) double ntu, @ForAll @DoubleRange(min = 0, max = 1) double c) {
        assertThat(Exchanger.counterUnits(Exchanger.counter(ntu, c), c)).isCloseTo(ntu, withinPercentage(1e-4));
    }
}
