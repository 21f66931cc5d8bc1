package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import stokewell.loop.PickupWater;
import stokewell.matter.Water;
import stokewell.network.Plant;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/** Faults that make no noise, a vent that narrows, and tar that burns. */
class QuietFaultsTest {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private static Drill one(Rig rig, Fault fault) {
        return Sound.run(rig, EnumSet.of(fault)).of(fault);
    }

    @Test
    void aLeakEmptiesTheHeaderInItsVolumeOverItsFlowAndThenTheNextFireBoils() {
        Drill d = Sound.outcome(Sound.pumped()).of(Fault.LEAK);
        // 20 L at 6 L/h, looked at every ten minutes
        assertThat(d.sentence()).contains("empty after 3.3 h");
        assertThat(d.firstBoil()).isBetween(3.3 * 3600, 30 * 3600.0);
        assertThat(d.level()).isEqualTo(Level.MIND);
        Rig unseen = Sound.around(Sound.pumped(), "levelWatched", false);
        assertThat(one(unseen, Fault.LEAK).level()).isEqualTo(Level.MEND);
        var header = Sound.pumped().loop().header();
        Rig large = Sound.loop(Sound.pumped(), "header", Changed.with(header, "water", 0.2));
        assertThat(one(large, Fault.LEAK).firstBoil()).isGreaterThan(d.firstBoil());
    }

    @Test
    void aLeakTakesAClosedLoopsPressureInWhatItsVesselHoldsOverTheFlow() {
        Rig closed = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.12, 75000, 100000));
        Drill d = one(closed, Fault.LEAK);
        assertThat(d.sentence()).contains("gauge").doesNotContain("header");
        double hours = Double.parseDouble(d.sentence().replaceAll("(?s)^.*at zero after ([\\d.]+) h.*$", "$1"));
        // cold, 120 L at 0.75 bar hold 15 L when filled to 1 bar, by Boyle: 2.5 h at 6 L/h; warm water has pushed more
        // in
        double air = Sound.plant(closed).pressure();
        double cold = 120 * (1 - (air + 75000) / (air + 100000));
        double grown = 120 * (1 - (air + 75000) / (air + 250000));
        assertThat(hours).isBetween(cold / 6 - 0.2, (grown + 120 * 0.45) / 6);
        Rig large = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.3, 75000, 100000));
        assertThat(one(large, Fault.LEAK).firstBoil()).isGreaterThan(d.firstBoil());
    }

    @Test
    void sootTakesHeatFromTheWater() {
        Drill d = Sound.outcome(Sound.pumped()).of(Fault.FOULED);
        // 0.03 m2.K/W beside a flame of some 40 to 80 W/m2.K: between a tenth and two thirds, by series resistance
        assertThat(d.heat())
                .isLessThan(Sound.outcome(Sound.pumped()).of(Fault.OVER_FIRE).heat());
        double taken = Double.parseDouble(d.sentence().replaceAll("^Soot takes (\\d+) %.*$", "$1"));
        assertThat(taken).isBetween(10.0, 67.0);
    }

    @Test
    void theCheckValveKeepsTheNightsHeatOutOfTheChimney() {
        Rig low = Sound.store(Sound.pumped(), "elevation", -0.9);
        low = Sound.loop(low, "header", Changed.with(low.loop().header(), "level", 2.8));
        Drill free = one(low, Fault.REVERSE_FLOW);
        Drill bare = one(Sound.loop(low, "checkValve", Double.NaN), Fault.REVERSE_FLOW);
        double kept = Double.parseDouble(
                free.sentence().replaceAll("(?s)^.*With its check valve it is ([\\d.]+) kWh.*$", "$1"));
        // the store stands below its coil, so nothing but the valve keeps warm water out of the cold coil
        assertThat(free.drawn() / 3.6e6).isGreaterThan(kept);
        assertThat(bare.drawn()).isPositive();
        assertThat(free.sentence()).contains("With its check valve");
        assertThat(bare.sentence()).doesNotContain("With its check valve");
    }

    @Test
    void steamThatANarrowVentDoesNotPassRaisesTheBoilingPoint() {
        // 12 mm, of which a third is left: 4 mm
        var header = Changed.with(Sound.pumped().loop().header(), "vent", 0.012);
        Drill narrow = one(Sound.loop(Sound.pumped(), "header", header), Fault.VENT_NARROW);
        Drill wide = Sound.outcome(Sound.pumped()).of(Fault.AIR_LOCK);
        double head = Pressure.head(Sound.pumped());
        double air = Sound.plant(Sound.pumped()).pressure();
        assertThat(narrow.pressure()).isGreaterThan(head + 2000);
        // the water comes to where it boils at that pressure, by the steam tables, and no hotter
        assertThat(narrow.water().temperature())
                .isBetween(
                        Water.saturationTemperature(air + head) + 0.4,
                        Water.saturationTemperature(air + narrow.pressure()) + 1.5);
        assertThat(narrow.water().temperature()).isGreaterThan(wide.water().temperature());
        // steam of 1 kg/h through 4 mm, by hand: 0.6 A, 0.598 kg/m3, so 61.6 m/s and 1134 Pa
        assertThat(Vented.back(0.004, 1 / 3600.0, 101325)).isCloseTo(1134, within(6.0));
    }

    @Test
    void pastHalfAnAtmosphereTheVentIsChokedAsNapierSays() {
        double area = Math.PI / 4 * 0.01 * 0.01;
        double steam = stokewell.loop.Relief.napier(0.6, area, 301325);
        assertThat(Vented.back(0.01, steam, 101325)).isCloseTo(200000, within(1.0));
    }

    @Test
    void theOpenVentBuysTheMetal() {
        Rig bare = Sound.safe(Sound.pumped(), "relief", null);
        Drill d = one(bare, Fault.RELIEF_FAILS);
        assertThat(d.guards()).anySatisfy(g -> {
            assertThat(g.name()).isEqualTo("open vent");
            assertThat(g.pressureWithout()).isEqualTo(NEVER);
            assertThat(g.pressureWith()).isLessThan(50000);
        });
        // with a relief valve behind it the pressure would stand at the valve's, 1.5 bar and a tenth at full lift
        assertThat(Sound.outcome(Sound.pumped()).of(Fault.RELIEF_FAILS).guards())
                .anySatisfy(g -> assertThat(g.pressureWithout()).isBetween(150000.0, 165000.0));
    }

    @Test
    void aReliefValveHoldsWhatItPassesAndNothingThatItCannotReach() {
        Drill good = Sound.outcome(Sound.pumped()).of(Fault.VENT_BLOCKED);
        assertThat(relief(good).pressureWith()).isBetween(150000.0, 165000.0);
        Drill small = one(Sound.relief(Sound.pumped(), "rated", 1000.0), Fault.VENT_BLOCKED);
        assertThat(relief(small).pressureWith()).isGreaterThan(200000);
        assertThat(relief(small).pressureWith()).isEqualTo(small.pressure());
        Drill behind = one(Sound.safe(Sound.pumped(), "valveToOpen", true), Fault.VENT_BLOCKED);
        assertThat(behind.guards()).noneMatch(g -> g.name().equals("relief valve"));
        assertThat(behind.pressure()).isEqualTo(NEVER);
    }

    private static Drill.Guard relief(Drill d) {
        return d.guards().stream()
                .filter(g -> g.name().equals("relief valve"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDischargeValveCoolsWhileTheVentIsNarrowToo() {
        var header = Changed.with(Sound.pumped().loop().header(), "vent", 0.012);
        Rig bare = Sound.loop(Sound.pumped(), "header", header);
        Rig cooled = Sound.safe(bare, "discharge", new Safety.Discharge(368.15, 25000, true));
        Drill without = one(bare, Fault.VENT_NARROW);
        Drill with = one(cooled, Fault.VENT_NARROW);
        assertThat(with.water().temperature()).isLessThan(without.water().temperature() - 1);
        assertThat(with.pressure()).isLessThan(without.pressure());
    }

    @Test
    void waterUnderTheBackOfItsSteamLiftsNoBubblesBelowWhereItBoilsThen() {
        Plant plant = Sound.plant(Sound.thermosiphon());
        double[] x = plant.network().columns(0, plant.network().start());
        PickupWater coil = plant.pickups().get(plant.pickups().size() - 1);
        for (int node = 0; node < plant.store().length; node++) x[plant.store()[node]] = 330;
        for (PickupWater p : plant.pickups()) x[p.water()] = coil.saturation() + 2;
        double lifted = plant.loop().standingFlow(x);
        Stage.press(plant, 5);
        double still = plant.loop().standingFlow(x);
        assertThat(still).isLessThan(0.99 * lifted);
        Stage.press(plant, 50);
        assertThat(plant.loop().standingFlow(x)).isCloseTo(still, within(1e-12));
        Stage.press(plant, 0);
        assertThat(plant.loop().standingFlow(x)).isCloseTo(lifted, within(1e-9));
    }

    @Test
    void aStoreThatIsHotToItsBottomTakesLess() {
        Drill full = Sound.outcome(Sound.pumped()).of(Fault.STORE_FULL);
        Drill day = Sound.outcome(Sound.pumped()).of(Fault.DOUBLE_LOAD);
        assertThat(full.water().temperature()).isGreaterThan(day.water().temperature() - 15);
        assertThat(full.storeTop()).isGreaterThan(300);
    }

    @Test
    void aConnectorInAChimneyFireBalances() {
        double wall = ChimneyFire.wall(ChimneyFire.GAS, 293.15);
        double s = 5.670374e-8;
        double in = 30 * (1422 - wall) + 0.3 * s * (Math.pow(1422, 4) - Math.pow(wall, 4));
        double out = 10 * (wall - 293.15) + 0.9 * s * (Math.pow(wall, 4) - Math.pow(293.15, 4));
        assertThat(in).isCloseTo(out, withPercentage(0.01));
        // between dull and bright red, as owners tell of it
        assertThat(wall - 273.15).isBetween(600.0, 900.0);
        double d = ChimneyFire.distance(wall, 293.15, 0.15, ChimneyFire.LIGHTS);
        assertThat(ChimneyFire.flux(wall, 293.15, 0.15, d)).isCloseTo(12500, withPercentage(0.1));
        // the 18 in that the code asks of a bare connector stand clear of lighting
        assertThat(d).isLessThan(0.457);
    }

    @Test
    void woodTooNearABareConnectorIsFoundByTheChimneyFire() {
        Rig near = Sound.around(Sound.pumped(), "connectorClearance", 0.1);
        assertThat(Sound.answered(near).of("chimney.fire").level()).isEqualTo(Level.MEND);
        assertThat(Sound.answered(Sound.pumped()).of("chimney.fire").level()).isEqualTo(Level.MIND);
    }

    @Test
    void aCheckValveThatRustHoldsShutTakesTheWayByGravity() {
        Rig free = Sound.thermosiphon();
        assertThat(Sound.outcome(free).of(Fault.CHECK_STUCK).possible()).isFalse();
        Rig flap = Sound.loop(free, "checkValve", 20.0);
        Drill stuck = one(flap, Fault.CHECK_STUCK);
        Drill outage = one(flap, Fault.POWER_OUT);
        assertThat(outage.firstBoil()).isEqualTo(NEVER);
        assertThat(stuck.firstBoil()).isLessThan(3600);
        assertThat(stuck.level().asBadAs(Level.MEND)).isTrue();
        assertThat(stuck.sentence()).contains("try it at a small fire");
    }

    /**
     * A closed loop at a pressure boils at the boiling point of that pressure, and once that is gone at that of the air: 2 bar absolute
     * 120.2 C, 1 atm 100.0 C (IAPWS-IF97 saturation line).
     */
    @Test
    void aReliefValveThatDripsTakesTheTimeThatThePressureGave() {
        assertThat(Sound.outcome(Sound.pumped()).of(Fault.RELIEF_WEEPS).possible())
                .isFalse();
        Rig closed = Rigs.closed();
        Drill weeping = one(closed, Fault.RELIEF_WEEPS);
        Drill firm = one(closed, Fault.PUMP_DEAD);
        assertThat(weeping.possible()).isTrue();
        assertThat(weeping.firstBoil()).isLessThan(firm.firstBoil());
        assertThat(weeping.sentence()).contains("boils at 100 °C").contains("never cap it");
        assertThat(weeping.level().asBadAs(firm.level())).isTrue();
    }

    @Test
    void anIcedCapSlowsTheFireAndLetsSmokeOutOfAnOpenDoor() {
        Drill iced = Sound.outcome(Sound.pumped()).of(Fault.CAP_BLOCKED);
        // loss factor 6 and friction 0.04 L/D = 0.04 x 6.5 / 0.15 = 1.73; a quarter of the cap adds 1/0.25^2 - 1 = 15:
        // sqrt(7.73 / 22.73) = 58 %
        assertThat(iced.sentence()).contains("takes 58 %");
        Drill clear = Sound.outcome(Sound.pumped()).of(Fault.AIR_LOCK);
        assertThat(iced.stove()).isLessThan(clear.stove() + 1);
        assertThat(iced.level()).isEqualTo(Level.MIND);
        Rig silent = Sound.around(Sound.pumped(), "monoxideAlarm", false);
        assertThat(one(silent, Fault.CAP_BLOCKED).level()).isEqualTo(Level.MEND);
        assertThat(Sound.rerun(silent).of("chimney.cap").level()).isEqualTo(Level.MEND);
    }

    @Test
    void aDrillWhoseRunFailedIsNotPassed() {
        Drill failed = Drill.unreckoned(Fault.AIR_LOCK, "at t = 5 s");
        assertThat(failed.failed()).isTrue();
        assertThat(Drill.impossible(Fault.FAN_DEAD, "This rig has no fan.").failed())
                .isFalse();
        Check check = Check.of(Sound.pumped(), Sound.outcome(Sound.pumped()).day(), java.util.List.of(failed));
        assertThat(check.of("drill.air-lock").level()).isEqualTo(Level.MEND);
    }

    @Test
    void whatStandsOrEndsOverTheCeilingIsFound() {
        // the room is 3 m high
        double ceiling = Sound.pumped().room().height();
        Rig tall = Sound.store(Sound.pumped(), "elevation", ceiling - 1.4);
        assertThat(Sound.answered(tall).of("store.headroom").level()).isEqualTo(Level.MEND);
        assertThat(Sound.answered(Sound.pumped()).of("store.headroom")).isNull();
        var header = Sound.pumped().loop().header();
        Rig low = Sound.loop(Sound.pumped(), "header", Changed.with(header, "level", ceiling - 0.7));
        assertThat(Sound.answered(low).of("vent.ceiling")).isNull();
        Rig high = Sound.loop(Sound.pumped(), "header", Changed.with(header, "level", ceiling - 0.2));
        assertThat(Sound.answered(high).of("vent.ceiling").level()).isEqualTo(Level.MIND);
    }

    @Test
    void waterThatStandsStillInTheHeaderFreezesSoonAfterTheRoom() {
        Drill d = Sound.outcome(Sound.pumped()).of(Fault.FROZEN_RUN);
        assertThat(d.roomLowest()).isLessThan(273.15);
        assertThat(d.sentence()).contains("header or vent");
    }

    @Test
    void theHeaderAndItsOverflow() {
        Rig rig = Sound.pumped();
        assertThat(Sound.answered(rig).of("expansion.header").level()).isEqualTo(Level.FINE);
        assertThat(Sound.answered(Sound.vent(rig, "headerHolds", 0.03))
                        .of("expansion.header")
                        .level())
                .isEqualTo(Level.MEND);
        assertThat(Sound.answered(Sound.vent(rig, "headerHolds", Double.NaN))
                        .of("expansion.header")
                        .level())
                .isEqualTo(Level.MIND);
        assertThat(Sound.answered(Sound.vent(rig, "overflow", false))
                        .of("expansion.overflow")
                        .level())
                .isEqualTo(Level.MEND);
        assertThat(Sound.answered(rig).of("expansion.overflow").level()).isEqualTo(Level.FINE);
        Rig loose = Sound.store(rig, "cover", Store.Cover.LOOSE);
        assertThat(Sound.answered(loose).of("expansion.store")).isNotNull();
        assertThat(Sound.answered(rig).of("expansion.store")).isNull();
    }

    @Test
    void aRigThatCarriesItsHeatAwayByItselfNeedsNoOtherHeatLeak() {
        assertThat(Sound.answered(Sound.thermosiphon()).of("boil.dump").level()).isEqualTo(Level.FINE);
        assertThat(Sound.answered(Sound.pumped()).of("boil.dump").what()).contains("finned pipe");
    }
}
