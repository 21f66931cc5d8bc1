package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Emitter;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Safety;
import stokewell.rig.Stove;
import stokewell.rig.Switch;

class DrillsTest {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private static Drill one(Rig rig, Fault fault) {
        return Sound.run(rig, EnumSet.of(fault)).of(fault);
    }

    /** The air stands wide open while a fire is lit; where it always does, the heat at the start is the heat that follows. */
    private static Rig wideOpen() {
        Rig rig = Sound.pumped();
        return Changed.with(rig, "stove", Changed.with(rig.stove(), "air", new Stove.Air.Hand(1, 0.05)));
    }

    @Test
    void aStoppedPickupBoilsWhenAnEnergyBalanceSaysSo() {
        Drills.Outcome o = Sound.run(wideOpen(), EnumSet.of(Fault.POWER_OUT));
        Drill d = o.of(Fault.POWER_OUT);
        var trace = o.day().trace();
        int i = (int) Math.round((d.start() - trace.time(0)) / trace.step());
        Pickup coil = Sound.pumped().pickups().get(0);
        // water 4 L and metal 12 kg from where they stand to 105 C, by the heat that the fire then gives the water
        double capacity = coil.volume() * 983.2 * 4185 + coil.metal() * 480;
        double heat = trace.value("power fire to water", i);
        double reckoned = capacity * (105.2 + 273.15 - trace.value("water coil", i)) / heat;
        // the fire weakens as the metal warms, and the riser takes a little
        assertThat(d.firstBoil()).isCloseTo(reckoned, withPercentage(30));
    }

    @Test
    void theWorstMomentIsWorseThanTheMorning() {
        Drills.Outcome o = Sound.run(wideOpen(), EnumSet.of(Fault.POWER_OUT));
        double least = o.day().minutesToBoil().get(0).minutes() * 60;
        // the sum holds the fire's heat as it stands; in the drill it burns down, and the riser takes some
        assertThat(o.of(Fault.POWER_OUT).firstBoil()).isLessThan(1.4 * least);
    }

    @Test
    void aThermosiphonNeedsNoPowerAndSaysWhatThatBuys() {
        Drill d = Sound.outcome(Sound.thermosiphon()).of(Fault.POWER_OUT);
        assertThat(d.firstBoil()).isEqualTo(NEVER);
        assertThat(d.guards()).anySatisfy(g -> {
            assertThat(g.name()).isEqualTo("gravity circulation");
            assertThat(g.without()).isLessThan(3600);
            assertThat(g.with()).isEqualTo(NEVER);
        });
    }

    @Test
    void takingTheCheckValveOutTurnsMinutesIntoNever() {
        assertThat(Sound.outcome(Sound.pumped()).of(Fault.POWER_OUT).firstBoil())
                .isLessThan(1200);
        Rig mended = Sound.loop(Sound.pumped(), "checkValve", Double.NaN);
        Pipe wide = new Pipe(3, 0.04, 0.003, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
        mended = Sound.loop(Sound.loop(mended, "supply", wide), "back", wide);
        assertThat(one(mended, Fault.POWER_OUT).firstBoil()).isEqualTo(NEVER);
    }

    @Test
    void aBatteryBuysTheTimeThatItLasts() {
        Rig rig = Sound.safe(Sound.pumped(), "battery", new Safety.Battery(45 * 3600));
        Drill d = one(rig, Fault.POWER_OUT);
        // one hour at 45 W; the fire is nearly out by then
        assertThat(d.firstBoil()).isGreaterThan(3600);
        assertThat(d.guards()).anySatisfy(g -> assertThat(g.without()).isLessThan(1200));
    }

    @Test
    void aDischargeValveThatNeedsNoPowerKeepsItFromBoiling() {
        Rig rig = Sound.safe(Sound.pumped(), "discharge", new Safety.Discharge(368.15, 20000, true));
        Drill d = one(rig, Fault.POWER_OUT);
        assertThat(d.firstBoil()).isEqualTo(NEVER);
        assertThat(d.guards())
                .anySatisfy(g -> assertThat(g.name()).isEqualTo("thermal discharge valve"))
                .allSatisfy(g -> assertThat(g.without()).isLessThan(1200));
        Rig useless = Sound.safe(Sound.pumped(), "discharge", new Safety.Discharge(368.15, 20000, false));
        assertThat(one(useless, Fault.POWER_OUT).firstBoil()).isLessThan(1200);
    }

    @Test
    void aGravityRadiatorIsTriedByTakingItAway() {
        Drill d = Sound.outcome(Sound.thermosiphon()).of(Fault.POWER_OUT);
        assertThat(d.guards()).anySatisfy(g -> assertThat(g.name()).isEqualTo("radiator by gravity"));
    }

    @Test
    void aSecondThermostatCatchesTheSensorThatFellOut() {
        Rig rig = Sound.pumped();
        List<Switch> switches = new ArrayList<>(rig.switches());
        Switch pump = switches.get(0);
        switches.set(
                0,
                Changed.with(
                        pump,
                        "highLimit",
                        new Switch.Thermostat(Rigs.sensor(Switch.Spot.OUTLET), 273.15 + 85, 273.15 + 78)));
        Rig mended = rig.switched(switches);
        assertThat(Sound.outcome(rig).of(Fault.SENSOR_OUT).firstBoil()).isLessThan(1200);
        assertThat(one(mended, Fault.SENSOR_OUT).firstBoil()).isEqualTo(NEVER);
        assertThat(one(mended, Fault.STUCK_OFF).firstBoil()).isEqualTo(NEVER);
        assertThat(one(mended, Fault.POWER_OUT).firstBoil()).isLessThan(1200);
    }

    @Test
    void lessWaterInTheHeaderNeverMakesTheMetalLastLonger() {
        Drills.Outcome o = Sound.outcome(Sound.pumped());
        assertThat(o.of(Fault.LOW_WATER).exposed())
                .isLessThanOrEqualTo(o.of(Fault.AIR_LOCK).exposed());
    }

    @Test
    void aWideOpenFireMakesMoreHeatAndBoilsSooner() {
        Drills.Outcome o = Sound.outcome(Sound.pumped());
        assertThat(o.of(Fault.RELIEF_FAILS).heat())
                .isGreaterThan(o.of(Fault.POWER_OUT).heat());
        assertThat(o.of(Fault.RELIEF_FAILS).firstBoil())
                .isLessThan(o.of(Fault.POWER_OUT).firstBoil());
    }

    @Test
    void steamIsNoMoreThanTheHeatThatMakesIt() {
        for (Drill d : Sound.outcome(Sound.pumped()).drills()) {
            if (d.possible()) assertThat(d.steamPower()).isLessThanOrEqualTo(1.05 * d.heat() + 1);
        }
    }

    @Test
    void everyFaultIsTold() {
        for (Rig rig :
                List.of(Sound.pumped(), Sound.thermosiphon(), Rigs.pumped().withoutWater())) {
            Drills.Outcome o = rig.loop() == null ? Sound.run(rig, EnumSet.allOf(Fault.class)) : Sound.outcome(rig);
            assertThat(o.drills()).hasSize(Fault.values().length);
            assertThat(o.drills()).allSatisfy(d -> assertThat(d.sentence()).isNotBlank());
        }
    }

    @Test
    void shutInWaterWithNoReliefAtTheStoveBursts() {
        Rig bare = Sound.safe(Sound.safe(Sound.pumped(), "relief", null), "valveToOpen", true);
        assertThat(one(bare, Fault.VALVE_SHUT).pressure()).isEqualTo(NEVER);
        assertThat(Sound.outcome(Sound.pumped()).of(Fault.VALVE_SHUT).pressure())
                .isLessThan(2e5);
    }

    @Test
    void aClosedLoopStandsAtItsValveAndBoilsLater() {
        Rig closed = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.12, 75000, 100000));
        Drill open = Sound.outcome(Sound.pumped()).of(Fault.POWER_OUT);
        Drill d = one(closed, Fault.POWER_OUT);
        assertThat(d.firstBoil()).isGreaterThan(open.firstBoil());
        // 40 kW of valve against some 2 kW of fire: a little over its opening pressure, never past the 10 % of full
        // lift
        assertThat(d.pressure()).isBetween(150000.0, 165000.0);
    }

    @Test
    void aPowerCutInARadiatorHouseLeavesTheRadiatorRunning() {
        Emitter.Radiator r = (Emitter.Radiator) Sound.thermosiphon().emitters().get(0);
        assertThat(r.circuit().pump()).isNull();
        assertThat(Sound.outcome(Sound.thermosiphon()).of(Fault.POWER_OUT).roomLowest())
                .isGreaterThan(270);
    }
}
