package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExpansionTankTest {

    /** A stove maker's installation manual: 600 L, e 0.035, 2.3 to 4 bar abs gives 49.4 L. */
    @Test
    void theManualsVesselIsFound() {
        assertThat(ExpansionTank.vesselVolume(0.6 * 0.035, 0, 2.3e5, 4e5)).isCloseTo(0.0494, withinPercentage(1));
    }

    /** EN 12828 formula from memory; 1000 L, Ve 35.9 L, Vr 5 L; pressures in bar gauge. */
    @ParameterizedTest
    @CsvSource({"2.5, 1.0, 95.4", "2.5, 0.5, 71.6", "1.5, 0.5, 102.3"})
    void en12828Vessel(double highest, double precharge, double litres) {
        assertThat(ExpansionTank.reserve(1)).isEqualTo(0.005);
        double v = ExpansionTank.vesselVolume(0.0359, 0.005, (precharge + 1) * 1e5, (highest + 1) * 1e5);
        assertThat(v * 1000).isCloseTo(litres, within(0.1));
    }

    /**
     * A boiler maker's manual after BS 7074 and BS 5449 (read): a vessel of 0.063 of the system's volume at 0.7 bar of filling
     * and a valve of 3 bar. It counts no reserve.
     */
    @Test
    void theVesselOfAMakersManualByTheBritishStandards() {
        double grown = ExpansionTank.expansion(1, 999.7015, 965.3187);
        double v = ExpansionTank.vesselVolume(grown, 0, 101325 + 0.7e5, 101325 + 3e5);
        assertThat(v).isCloseTo(0.063, withinPercentage(2));
    }

    /** A maker of solid-fuel boilers (read) asks an open vessel of 7 % of the water: more than the 5 % of common practice. */
    @Test
    void aMakersOpenVesselIsLargerThanTheLeast() {
        double grown = ExpansionTank.expansion(1, 999.7015, 965.3187);
        assertThat(ExpansionTank.headerVolume(1, grown)).isBetween(0.05, 0.07);
    }

    /** IAPWS-IF97 densities: 10 to 90 °C grows 3.562 %; 1800 L grow about 65 L and want a header of 90 L. */
    @Test
    void waterGrowsAndTheHeaderHoldsIt() {
        assertThat(ExpansionTank.expansion(1, 999.7015, 965.3187)).isCloseTo(0.03562, within(1e-5));
        double grown = ExpansionTank.expansion(1.8, 999.7015, 965.3187);
        assertThat(grown).isCloseTo(0.065, within(0.001));
        assertThat(ExpansionTank.headerVolume(1.8, grown)).isCloseTo(0.090, within(1e-9));
    }

    @Test
    void aVesselOfTheRightSizeEndsAtTheHighestPressure() {
        double v = ExpansionTank.vesselVolume(0.04, 0.005, 2e5, 3.5e5);
        assertThat(ExpansionTank.pressure(v, 2e5, 0.045)).isCloseTo(3.5e5, within(1e-3));
        assertThat(ExpansionTank.taken(v, 2e5, 3.5e5)).isCloseTo(0.045, within(1e-12));
        assertThat(ExpansionTank.pressure(v, 2e5, 0)).isEqualTo(2e5);
        double h = 1e-7;
        double slope = (ExpansionTank.pressure(v, 2e5, 0.02 + h) - ExpansionTank.pressure(v, 2e5, 0.02 - h)) / (2 * h);
        assertThat(ExpansionTank.pressureSlope(v, 2e5, 0.02)).isCloseTo(slope, withinPercentage(1e-4));
    }

    @Test
    void aPrechargeAboveTheReliefValveIsRefused() {
        assertThatThrownBy(() -> ExpansionTank.vesselVolume(0.04, 0, 4e5, 3e5)).hasMessageContaining("precharge");
    }
}
