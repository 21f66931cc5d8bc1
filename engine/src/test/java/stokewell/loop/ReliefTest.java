package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReliefTest {

    /** ASME VIII-1, appendix on capacity conversion: 3020 lb/h at 234.7 psia through KA 0.24985 in². */
    @Test
    void napierIsTheCodesExample() {
        double kgPerSecond = Relief.napier(1, 0.24985 * 6.4516e-4, 234.7 * 6894.757);
        assertThat(kgPerSecond * 3600 / 0.45359237).isCloseTo(3020, withinPercentage(0.1));
    }

    /** Napier in SI: 0.5252 kg/h per mm² and bar. */
    @Test
    void napierInSi() {
        assertThat(Relief.napier(1, 1e-6, 1e5) * 3600).isCloseTo(0.5252, within(1e-4));
    }

    /** ISO 4126-1, from memory. */
    @ParameterizedTest
    @CsvSource({"1.135, 2.509", "1.3, 2.634", "1.4, 2.703"})
    void isoConstant(double k, double c) {
        assertThat(Relief.isoConstant(k)).isCloseTo(c, within(6e-4));
    }

    /** Two codes, one valve: saturated steam at 4.313 bar abs, 0.4319 m³/kg (IAPWS-IF97), within 1.5 %. */
    @Test
    void isoAndNapierAgreeOnSteam() {
        double iso = Relief.iso4126(1.135, 1, 1e-6, 4.313e5, 0.4319) * 3600;
        assertThat(iso).isCloseTo(2.289, withinPercentage(0.5));
        assertThat(Relief.napier(1, 1e-6, 4.313e5) * 3600)
                .isCloseTo(2.265, within(0.001))
                .isCloseTo(iso, withinPercentage(1.5));
    }

    /** 1.595 kg/h per kW at 100 °C, 1.637 at 15 psi gauge; IAPWS-IF97. */
    @Test
    void aKilowattBoilsAbout1600GramsAnHour() {
        assertThat(Relief.steamRate(1000, 2256.54e3) * 3600).isCloseTo(1.595, within(0.001));
        assertThat(Relief.steamRate(1000, 2199.5e3) * 3600).isCloseTo(1.637, within(0.001));
    }

    /**
     * A maker of water heaters (read): under a valve of 0.6, 0.7 or 1 MPa it may be run at 0.48, 0.56 or 0.8 MPa, for the valve
     * must have room to shut again.
     */
    @ParameterizedTest
    @CsvSource({"0.6, 0.48", "0.7, 0.56", "1.0, 0.8"})
    void aValveHasRoomToShutAFifthUnderItsPressure(double opens, double runs) {
        assertThat(opens * (1 - SealedLoop.BLOWDOWN)).isCloseTo(runs, within(1e-9));
    }

    /** A maker of a 20 kW solid-fuel boiler (read) asks pipes of 25 mm to an open vessel: no narrower than the rule. */
    @Test
    void aMakersVentPipeIsNoNarrowerThanTheRule() {
        assertThat(Relief.ventBore(20e3)).isLessThanOrEqualTo(0.025);
        assertThat(Relief.coldFeedBore(20e3)).isLessThanOrEqualTo(0.025);
    }

    /** DIN 4751-1 / EN 12828, from memory and not verified. */
    @ParameterizedTest
    @CsvSource({"20e3, 21.3, 19.2", "50e3, 24.9, 21.6", "2e3, 19, 19"})
    void openVentBores(double power, double vent, double feed) {
        assertThat(Relief.ventBore(power) * 1000).isCloseTo(vent, within(0.05));
        assertThat(Relief.coldFeedBore(power) * 1000).isCloseTo(feed, within(0.05));
    }
}
