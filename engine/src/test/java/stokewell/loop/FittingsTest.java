package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittingsTest {

    /** White's and Moody's values as reprinted at lmnoeng.com/surface.htm; entrances and exit pe-calc.com. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "90° elbow; 1.5",
                "Elbow, 90 degrees, flanged; 0.3",
                "long radius elbows; 0.7",
                "45° elbow; 0.4",
                "return bend; 1.5",
                "tee, line; 0.9",
                "tee branch; 2.0",
                "globe valve; 10",
                "angle valve; 2",
                "gate valve; 0.15",
                "swing check valve; 2",
                "check valve; 2",
                "sharp entrance; 0.5",
                "exit; 1.0",
                "GATE_VALVE_HALF_CLOSED; 2.1"
            })
    void plainWordsFindTheFitting(String words, double k) {
        assertThat(Fittings.named(words))
                .hasValueSatisfying(f -> assertThat(f.k()).isEqualTo(k));
    }

    @Test
    void unknownWordsFindNothing() {
        assertThat(Fittings.named("flux capacitor")).isEmpty();
        assertThat(Fittings.named("")).isEmpty();
    }

    @Test
    void everyFittingIsFoundByItsOwnName() {
        for (Fittings f : EnumSet.allOf(Fittings.class)) {
            assertThat(Fittings.named(f.name())).contains(f);
        }
    }

    /** K 10, 1000 kg/m³, 3 m/s: 45 000 Pa by definition. */
    @Test
    void lossIsOfTheDynamicPressure() {
        double bore = 0.05;
        double flow = 1000 * 3 * Math.PI / 4 * bore * bore;
        assertThat(Fittings.pressureLoss(10, flow, bore, 1000)).isCloseTo(45000, withinPercentage(1e-9));
        assertThat(Fittings.pressureLoss(10, -flow, bore, 1000)).isCloseTo(-45000, withinPercentage(1e-9));
        assertThat(Fittings.pressureLossSlope(10, flow, bore, 1000)).isCloseTo(90000 / flow, withinPercentage(1e-9));
    }

    /** Kv 4 passes 1 m³/h at 6.25 kPa, by definition (EN 60534). */
    @Test
    void kvIsCubicMetresAnHourAtOneBar() {
        double k = Fittings.kFromKv(4, 0.02);
        assertThat(Fittings.pressureLoss(k, 1000 / 3600.0, 0.02, 1000)).isCloseTo(6250, withinPercentage(1e-9));
    }

    /** Borda-Carnot at half the bore. */
    @Test
    void wideningLosesTheSpeedThatIsLost() {
        assertThat(Fittings.wideningK(0.5, 1)).isCloseTo(0.5625, within(1e-12));
    }

    @Test
    void equivalentLengthLosesAsMuch() {
        assertThat(Fittings.ELBOW_90_THREADED.equivalentLength(0.02, 0.03)).isCloseTo(1, within(1e-12));
    }
}
