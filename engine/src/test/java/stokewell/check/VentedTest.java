package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import stokewell.loop.ExpansionTank;
import stokewell.loop.Relief;
import stokewell.matter.Water;
import stokewell.rig.Safety;
import stokewell.transfer.Boiling;

/** Ways out against published numbers. */
class VentedTest {

    private static final double AIR = 101325;

    /** ASME VIII-1, appendix on capacity conversion: 3020 lb/h at 200 psi set is K A = 0.24985 in2. */
    @Test
    void napierMatchesTheCodesExample() {
        double relieving = (1.10 * 200 + 14.7) * 6894.757;
        double flow = Relief.napier(1, 0.24985 * 6.4516e-4, relieving);
        assertThat(flow * 3600 / 0.45359237).isCloseTo(3020, withPercentage(0.1));
    }

    /** Heat-input rule of US states, 1 lb/h for 1000 Btu/h; at 15 psig steam takes 1.637 kg/h a kW (steam tables). */
    @Test
    void steamOfOneKilowattMatchesTheTables() {
        double latent = Water.latentHeat(Water.saturationTemperature(AIR + 15 * 6894.757));
        assertThat(Relief.steamRate(1000, latent) * 3600).isCloseTo(1.637, withPercentage(0.2));
        double rule = 0.45359237 / (1000 * 1055.06 / 3600) * 1000;
        assertThat(rule).isCloseTo(1.548, withPercentage(0.1));
    }

    /** A valve's seat of 15 mm at 1 bar: maker's tables give 38 kg/h and 23 kW for a small lift; a full bore passes more. */
    @Test
    void aValveGivenByItsBorePassesWhatItsNozzlePasses() {
        Safety.ReliefValve valve = new Safety.ReliefValve(1e5, Double.NaN, 0.015, true, true);
        double relieving = 1.1e5 + AIR;
        double kgPerHour = 0.5252 * 0.6 * (Math.PI / 4 * 15 * 15) * relieving / 1e5;
        double latent = Water.latentHeat(Water.saturationTemperature(relieving));
        assertThat(Vented.valve(valve, AIR)).isCloseTo(kgPerHour / 3600 * latent, withPercentage(0.1));
    }

    @Test
    void aValveTooSmallLetsThePressureRiseInProportion() {
        Safety.ReliefValve valve = new Safety.ReliefValve(1.5e5, 10000, Double.NaN, true, true);
        assertThat(Vented.valvePressure(valve, 5000, AIR)).isCloseTo(1.575e5, withPercentage(0.01));
        assertThat(Vented.valvePressure(valve, 20000, AIR)).isCloseTo(2 * (1.65e5 + AIR) - AIR, withPercentage(0.01));
    }

    /** EN 12828's method: content 1000 L, growth 35.9 L, reserve 5 L, end 2.5 bar, precharge 1 bar: 95.4 L. */
    @Test
    void theVesselMatchesEn12828() {
        double litres = 1000 * ExpansionTank.vesselVolume(0.0359, ExpansionTank.reserve(1), 2e5, 3.5e5);
        assertThat(litres).isCloseTo(95.4, withPercentage(0.1));
    }

    /** Zuber at one atmosphere with IF97's properties: 1.108 MW/m2. */
    @Test
    void theCriticalFluxIsOnePointOneMegawatts() {
        assertThat(Boiling.criticalFlux(373.124)).isCloseTo(1.108e6, withPercentage(0.5));
    }
}
