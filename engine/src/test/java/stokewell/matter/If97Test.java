package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class If97Test {

    /**
     * Nine digits are printed; half a unit of the last is at most 5e-9 of the value, a little more where they are
     * fewer.
     */
    private static final double PRINTED = 1e-6;

    /** Every row of the IAPWS releases' verification tables; see NOTICE beside the file. */
    @ParameterizedTest(name = "{0}: {1} at {4}, {6}")
    @CsvFileSource(resources = "iapws-check-values.csv", numLinesToSkip = 1)
    void everyVerificationValueOfTheReleasesIsMet(
            String table, String quantity, String unit, String a, double first, String b, Double second, double value) {
        double tolerance = table.startsWith("R1-76") ? 0.01 : PRINTED;
        assertThat(computed(table, quantity, a, first, second)).isCloseTo(value, withinPercentage(tolerance));
    }

    private static double computed(String table, String quantity, String a, double first, Double second) {
        if (table.contains("region 4")) {
            return quantity.equals("psat")
                    ? If97.saturationPressure(first) / 1e6
                    : If97.saturationTemperature(first * 1e6);
        }
        if (table.contains("backward")) {
            return If97.liquidTemperature(first * 1e6, second * 1e3);
        }
        if (table.startsWith("R12")) {
            return 1e6 * (a.equals("T_K") ? Water.viscosity(first, second) : Water.viscosity(second, first));
        }
        if (table.startsWith("R15")) {
            return 1e3 * (a.equals("T_K") ? Water.conductivity(first, second) : Water.conductivity(second, first));
        }
        if (table.startsWith("R1-76")) {
            return 1e3 * Water.surfaceTension(first);
        }
        double p = second * 1e6;
        boolean liquid = table.contains("region 1");
        return switch (quantity) {
            case "v" -> liquid ? If97.liquidVolume(p, first) : If97.steamVolume(p, first);
            case "h" -> 1e-3 * (liquid ? If97.liquidEnthalpy(p, first) : If97.steamEnthalpy(p, first));
            case "u" -> 1e-3 * (liquid ? If97.liquidEnergy(p, first) : If97.steamEnergy(p, first));
            case "s" -> 1e-3 * (liquid ? If97.liquidEntropy(p, first) : If97.steamEntropy(p, first));
            case "cp" -> 1e-3 * (liquid ? If97.liquidSpecificHeat(p, first) : If97.steamSpecificHeat(p, first));
            case "w" -> liquid ? If97.liquidSoundSpeed(p, first) : If97.steamSoundSpeed(p, first);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** R12-08 table 4, the rows that the file leaves out; half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"433.15, 1, 14.538324", "433.15, 1000, 217.685358"})
    void viscosityOfSteamIsTheReleaseTable(double t, double density, double micro) {
        assertThat(1e6 * Water.viscosity(t, density)).isCloseTo(micro, within(5.1e-7));
    }

    /** An independent implementation of the same release, com.hummeling:if97. */
    @Test
    void agreesWithAnIndependentImplementation() {
        IF97 other = new IF97(IF97.UnitSystem.SI);
        for (double t = 275; t < 430; t += 7.3) {
            for (double p : new double[] {0.1e6, 0.15e6, 0.3e6, 1e6}) {
                if (p > If97.saturationPressure(t)) {
                    assertThat(If97.liquidVolume(p, t)).isCloseTo(other.specificVolumePT(p, t), withinPercentage(1e-8));
                    assertThat(If97.liquidSpecificHeat(p, t))
                            .isCloseTo(other.isobaricHeatCapacityPT(p, t), withinPercentage(1e-8));
                } else {
                    assertThat(If97.steamEnthalpy(p, t))
                            .isCloseTo(other.specificEnthalpyPT(p, t), withinPercentage(1e-8));
                }
            }
            assertThat(If97.saturationPressure(t)).isCloseTo(other.saturationPressureT(t), withinPercentage(1e-8));
        }
    }

    /** The backward equation is within 25 mK of the forward one, says the release. */
    @ParameterizedTest
    @CsvSource({"280", "330", "370", "400"})
    void temperatureComesBackFromEnthalpy(double t) {
        assertThat(If97.liquidTemperature(3e5, If97.liquidEnthalpy(3e5, t))).isCloseTo(t, within(0.025));
    }
}
