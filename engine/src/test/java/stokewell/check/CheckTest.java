package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Flue;
import stokewell.rig.Fuel;
import stokewell.rig.Layer;
import stokewell.rig.Metal;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Room;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.rig.Switch;

/** Each rule finds what is wrong, and does not find it on the rig that is mended. */
class CheckTest {

    private static final double K = 273.15;

    private static void finds(Check broken, Check mended, String id, Level level) {
        assertThat(broken.of(id)).as(id + " on the broken rig").isNotNull();
        assertThat(broken.of(id).level()).as(id).isEqualTo(level);
        assertThat(broken.of(id).what()).isNotBlank();
        assertThat(broken.of(id).why()).isNotBlank();
        assertThat(broken.of(id).remedy()).isNotBlank();
        assertThat(broken.of(id).basis()).isNotBlank();
        Finding after = mended.of(id);
        if (after != null)
            assertThat(after.level()).as(id + " on the mended rig").isGreaterThan(level);
    }

    private static void answer(Rig broken, String id, Level level) {
        finds(Sound.answered(broken), Sound.answered(sound(broken)), id, level);
    }

    private static Rig sound(Rig like) {
        return like.name().equals("pumped") ? Sound.pumped() : Sound.thermosiphon();
    }

    @Test
    void aRigOfWhichNothingIsKnownIsNeverFine() {
        Check unknown = Sound.answered(Rigs.pumped());
        for (String id : List.of(
                "vapours.present",
                "vapours.garage",
                "air.monoxide",
                "air.exhaust",
                "clearance.stove",
                "clearance.connector",
                "watch.unwatched",
                "wiring.breaker",
                "vent.valve",
                "vent.rise",
                "vent.shape",
                "vent.frost",
                "vent.feed",
                "boil.alarm",
                "control.hand",
                "frost.run",
                "water.level",
                "water.treated",
                "plastic.near")) {
            assertThat(unknown.of(id)).as(id).isNotNull();
            assertThat(unknown.of(id).level()).as(id).isEqualTo(Level.MIND);
            Finding known = Sound.answered(Sound.pumped()).of(id);
            if (known != null) assertThat(known.level()).as(id).isEqualTo(Level.FINE);
        }
    }

    @Test
    void aStopIsTheFirstFindingAndTheVerdict() {
        Check c = Sound.answered(Sound.safe(Sound.pumped(), "valveToOpen", true));
        assertThat(c.stops()).isTrue();
        assertThat(c.worst()).isEqualTo(Level.STOP);
        assertThat(c.findings().get(0).id()).isEqualTo("vent.valve");
        assertThat(Sound.answered(Sound.pumped()).stops()).isFalse();
    }

    @Test
    void idsAreGivenOnce() {
        for (Rig rig : List.of(Sound.pumped(), Rigs.pumped(), Sound.thermosiphon())) {
            assertThat(Sound.answered(rig).findings()).extracting(Finding::id).doesNotHaveDuplicates();
        }
    }

    // ------------------------------------------------- stories: what would have prevented them

    @Test
    void theFrozenAwayHouse() {
        answer(Sound.around(Sound.pumped(), "coldAndFull", 14 * 86400), "frost.run", Level.STOP);
        answer(Sound.relief(Sound.pumped(), "atStove", false), "relief.place", Level.MEND);
        Rig alone = Sound.safe(Sound.pumped(), "relief", null);
        finds(Sound.rerun(alone), Sound.answered(Sound.pumped()), "relief.second", Level.MEND);
    }

    @Test
    void theForgottenPumpSwitch() {
        answer(Sound.around(Sound.pumped(), "handSwitch", true), "control.hand", Level.STOP);
        Rig undriven = Sound.pumped().switched(List.of(Sound.pumped().switches().get(1)));
        finds(Sound.rerun(undriven), Sound.answered(Sound.pumped()), "control.hand", Level.STOP);
    }

    @Test
    void solderThenWeld() {
        answer(Sound.material(Sound.pumped(), "soldered", true), "metal.solder", Level.STOP);
        assertThat(Sound.answered(Sound.material(Sound.pumped(), "soldered", true))
                        .of("metal.solder")
                        .why())
                .contains("stronger is not safer");
    }

    @Test
    void theOpenAshDoor() {
        Finding f = Sound.answered(Sound.pumped()).of("fire.lighting");
        assertThat(f.level()).isEqualTo(Level.MIND);
        assertThat(f.remedy()).contains("8 minutes");
        assertThat(Sound.answered(Sound.thermosiphon()).of("fire.lighting").level())
                .isEqualTo(Level.FINE);
    }

    @Test
    void plasticOverTheFlue() {
        answer(Sound.material(Sound.pumped(), "plasticFromStove", 0.5), "plastic.near", Level.STOP);
        answer(Sound.material(Sound.pumped(), "plasticFromStove", 1.5), "plastic.near", Level.MEND);
    }

    @Test
    void theNightPumpDeath() {
        answer(Sound.around(Sound.pumped(), "hotAlarm", false), "boil.alarm", Level.MEND);
        Rig alone = Sound.around(Sound.around(Sound.pumped(), "hotAlarm", false), "unwatched", 6 * 3600);
        answer(alone, "watch.unwatched", Level.MEND);
    }

    @Test
    void furnitureWood() {
        Rig rig = Changed.with(Sound.pumped(), "fuel", new Fuel("pine", 0.08, Fuel.Basis.WET, Fuel.Form.OFFCUTS, 0.6));
        answer(rig, "fuel.offcuts", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("fuel.offcuts")).isNull();
    }

    @Test
    void theOutageIsTheFirstThingSaidAndMendedItIsNever() {
        Check broken = Sound.answered(Sound.pumped());
        assertThat(broken.findings().get(0).id()).isEqualTo("boil.outage");
        assertThat(broken.findings().get(0).level()).isEqualTo(Level.MEND);
        assertThat(broken.findings().get(0).what()).contains("min later");
        Pipe wide = new Pipe(3, 0.04, 0.003, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
        Rig mended = Sound.loop(Sound.pumped(), "checkValve", Double.NaN);
        mended = Sound.loop(Sound.loop(mended, "supply", wide), "back", wide);
        assertThat(Sound.rerun(mended).of("boil.outage").level()).isEqualTo(Level.FINE);
    }

    @Test
    void theGustInTheTallStack() {
        Flue tall = Changed.with(Sound.pumped().flue(), "height", 12.8);
        answer(Changed.with(Sound.pumped(), "flue", tall), "chimney.tall", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("chimney.tall")).isNull();
    }

    @Test
    void theThreeHundredGallonSurprise() {
        answer(Sound.around(Sound.pumped(), "levelWatched", false), "water.level", Level.MEND);
        Rig shallow = Sound.store(Sound.thermosiphon(), "supplyPort", 0.92);
        Rig mended = Sound.store(Sound.thermosiphon(), "supplyPort", 0.7);
        finds(Sound.answered(shallow), Sound.answered(mended), "loop.level", Level.MEND);
    }

    @Test
    void theSweatingFirebox() {
        Finding f = Sound.answered(Sound.pumped()).of("return.cold");
        assertThat(f.level()).isEqualTo(Level.MIND);
        assertThat(f.why()).contains("Turning the store down makes it worse");
    }

    @Test
    void thePluggedReliefOutlet() {
        answer(Sound.relief(Sound.pumped(), "clearOutlet", false), "relief.outlet", Level.MEND);
    }

    @Test
    void monoxideAtTheCoalStage() {
        answer(Sound.around(Sound.pumped(), "monoxideAlarm", false), "air.monoxide", Level.MEND);
        answer(Sound.around(Sound.pumped(), "exhaust", 0.4), "air.exhaust", Level.MEND);
        assertThat(Sound.answered(Rigs.pumped()).of("air.monoxide").why()).contains("not low");
    }

    @Test
    void theGoodStoryOfTheInhibitor() {
        answer(Sound.material(Sound.pumped(), "inhibitor", false), "water.treated", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("water.treated").level()).isEqualTo(Level.FINE);
    }

    // ------------------------------------------------- the other families

    @Test
    void vapoursAndGaragesComeFirst() {
        answer(Sound.around(Sound.pumped(), "flammables", true), "vapours.present", Level.STOP);
        answer(Sound.around(Sound.pumped(), "garage", true), "vapours.garage", Level.STOP);
        Rig both = Sound.safe(Sound.around(Sound.pumped(), "flammables", true), "valveToOpen", true);
        assertThat(Sound.answered(both).findings().get(0).id()).isEqualTo("vapours.present");
    }

    @Test
    void theOpenVent() {
        answer(Sound.vent(Sound.pumped(), "rise", 0.2), "vent.rise", Level.MEND);
        answer(Sound.vent(Sound.pumped(), "risesAllTheWay", false), "vent.shape", Level.MEND);
        answer(Sound.vent(Sound.pumped(), "warm", false), "vent.frost", Level.STOP);
        answer(Sound.vent(Sound.pumped(), "coldFeed", 0.0), "vent.feed", Level.MEND);
        var header = Sound.pumped().loop().header();
        answer(Sound.loop(Sound.pumped(), "header", Changed.with(header, "vent", 0.012)), "vent.bore", Level.MEND);
        answer(Sound.loop(Sound.pumped(), "header", Changed.with(header, "vent", 0.004)), "vent.bore", Level.STOP);
        answer(Sound.loop(Sound.pumped(), "header", Changed.with(header, "level", 0.4)), "vent.height", Level.STOP);
        answer(Sound.loop(Sound.pumped(), "header", Changed.with(header, "level", 1.2)), "vent.height", Level.MEND);
    }

    private static Rig closed() {
        Rig rig = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(0.12, 75000, 100000));
        return Sound.safe(rig, "discharge", new Safety.Discharge(368.15, 20000, true));
    }

    private static void closedFinds(Rig broken, String id, Level level) {
        finds(Sound.answered(broken), Sound.answered(closed()), id, level);
    }

    @Test
    void theClosedLoop() {
        closedFinds(Sound.safe(closed(), "relief", null), "relief.none", Level.STOP);
        closedFinds(Sound.relief(closed(), "rated", 1000.0), "relief.capacity", Level.STOP);
        closedFinds(Sound.relief(closed(), "atStove", false), "relief.place", Level.STOP);
        closedFinds(Sound.relief(closed(), "clearOutlet", false), "relief.outlet", Level.STOP);
        closedFinds(Sound.relief(closed(), "opens", 600000.0), "relief.pressure", Level.MEND);
        closedFinds(Sound.safe(closed(), "discharge", null), "closed.discharge", Level.MEND);
        closedFinds(
                Sound.safe(closed(), "discharge", new Safety.Discharge(368.15, 20000, false)),
                "closed.water",
                Level.MEND);
        closedFinds(Sound.store(closed(), "cover", Store.Cover.LOOSE), "closed.cover", Level.STOP);
        closedFinds(Sound.store(closed(), "shape", new Store.Shape.Square(0.6, 0.7, 1.2)), "closed.flat", Level.STOP);
        Rig small = Sound.safe(closed(), "vessel", new Safety.Vessel(0.02, 75000, 100000));
        Rig large = Sound.safe(closed(), "vessel", new Safety.Vessel(0.5, 25000, 50000));
        finds(Sound.answered(small), Sound.answered(large), "expansion.vessel", Level.MEND);
        Rig little = Sound.store(closed(), "shape", new Store.Shape.Round(0.6, 1.5));
        finds(Sound.answered(closed()), Sound.answered(little), "closed.code", Level.MEND);
        Rig untagged = Sound.relief(Sound.relief(closed(), "rated", Double.NaN), "bore", Double.NaN);
        closedFinds(untagged, "relief.capacity", Level.MIND);
    }

    @Test
    void clearances() {
        answer(Sound.around(Sound.pumped(), "clearance", 0.5), "clearance.stove", Level.MEND);
        answer(Sound.around(Sound.pumped(), "clearance", 0.2), "clearance.stove", Level.STOP);
        Rig shielded = Sound.around(Sound.around(Sound.pumped(), "clearance", 0.4), "shielded", true);
        assertThat(Sound.answered(shielded).of("clearance.stove").level()).isEqualTo(Level.FINE);
        answer(Sound.around(Sound.pumped(), "connectorClearance", 0.2), "clearance.connector", Level.MEND);
    }

    @Test
    void wiringNearWaterAndHeat() {
        answer(Sound.around(Sound.pumped(), "breaker", false), "wiring.breaker", Level.MEND);
        answer(Sound.around(Sound.pumped(), "cablesClear", false), "wiring.cables", Level.MEND);
        answer(Sound.around(Sound.pumped(), "bonded", false), "wiring.bond", Level.MEND);
        for (String id : List.of("wiring.breaker", "wiring.cables", "wiring.bond")) {
            assertThat(Sound.answered(Rigs.pumped()).of(id).level()).isEqualTo(Level.MIND);
            assertThat(Sound.answered(Sound.pumped()).of(id)).isNull();
        }
    }

    @Test
    void waterQuality() {
        answer(Sound.material(Sound.pumped(), "hardness", 300.0), "water.hardness", Level.MEND);
        assertThat(Sound.answered(Sound.material(Sound.pumped(), "hardness", 300.0))
                        .of("water.hardness")
                        .why())
                .contains("kg");
        answer(Sound.material(Sound.pumped(), "hardness", Double.NaN), "water.hardness", Level.MIND);
        answer(Sound.material(Sound.pumped(), "ph", 7.4), "water.acid", Level.MEND);
        Rig copper = Sound.material(Sound.material(Sound.pumped(), "pipe", Metal.COPPER), "ph", 7.6);
        copper = Sound.material(Sound.material(copper, "pickup", Metal.COPPER), "tank", Metal.STAINLESS);
        assertThat(Sound.answered(copper).of("water.acid")).isNull();
    }

    @Test
    void airForTheStoveAndDust() {
        Room tight = Changed.with(
                Sound.pumped().room(),
                "leakage",
                Changed.with(Sound.pumped().room().leakage(), "at50Pa", 0.2 / 3600));
        Rig closed = Sound.around(Changed.with(Sound.pumped(), "room", tight), "airOpening", 0.0);
        answer(closed, "air.stove", Level.MEND);
        assertThat(Sound.answered(Sound.around(closed, "airOpening", 0.03))
                        .of("air.stove")
                        .level())
                .isEqualTo(Level.FINE);
        answer(Sound.around(Sound.pumped(), "exhaust", 0.05), "air.dust", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("air.dust")).isNull();
    }

    @Test
    void theChangedController() {
        assertThat(Sound.answered(Sound.pumped()).of("care.proving").remedy()).contains("pump on");
        assertThat(Sound.answered(Sound.thermosiphon()).of("care.proving").remedy())
                .doesNotContain("pump on");
        assertThat(Sound.answered(Sound.pumped().withoutWater()).of("care.proving"))
                .isNull();
    }

    @Test
    void coalsThroughTheBarnAndAshInTheCompost() {
        answer(Sound.around(Sound.pumped(), "coalsOut", false), "care.coals", Level.MEND);
        assertThat(Sound.answered(Sound.around(Sound.pumped(), "coalsOut", false))
                        .of("care.coals")
                        .remedy())
                .contains("compost");
    }

    @Test
    void theFrozenPots() {
        Drills.Outcome o = Sound.outcome(Sound.pumped());
        Drill fan = o.of(Fault.FAN_DEAD);
        Drill freezing = Changed.with(fan, "roomLowest", K - 2);
        assertThat(Check.of(Sound.pumped(), o.day(), List.of(freezing))
                        .of("frost.goods")
                        .level())
                .isEqualTo(Level.MIND);
        Drill warm = Changed.with(fan, "roomLowest", K + 6);
        assertThat(Check.of(Sound.pumped(), o.day(), List.of(warm)).of("frost.goods"))
                .isNull();
    }

    @Test
    void adviceInCirculationIsAnsweredWhereItIsMet() {
        Check c = Sound.answered(Sound.safe(Sound.around(Sound.pumped(), "handSwitch", true), "relief", null));
        assertThat(c.of("control.hand").why()).contains("flick of the switch");
        assertThat(c.of("relief.second").why()).contains("harmless only while");
        assertThat(c.of("care.gauges").what()).contains("both be wrong");
        assertThat(c.of("chimney.sweep").remedy()).contains("only if the stove's maker says so");
        assertThat(Sound.answered(Sound.material(Sound.pumped(), "tank", Metal.PLASTIC))
                        .of("plastic.tank")
                        .why())
                .contains("266");
        Rig wet = Changed.with(
                Sound.pumped(), "fuel", new Fuel("mixed hardwood", 0.35, Fuel.Basis.WET, Fuel.Form.SPLITS, 0.6));
        answer(wet, "fuel.wet", Level.MEND);
        assertThat(Sound.answered(wet).of("fuel.wet").why()).contains("few percent");
    }

    @Test
    void theStoreThatHeatsTheChimneyAtNight() {
        Rig low = Sound.loop(Sound.store(Sound.pumped(), "elevation", 0.0), "checkValve", Double.NaN);
        Pipe wide = new Pipe(3, 0.04, 0.003, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
        low = Sound.loop(Sound.loop(low, "supply", wide), "back", wide);
        low = Changed.with(low, "pickups", List.of(Changed.with(low.pickups().get(0), "elevation", 1.6)));
        finds(Sound.rerun(low), Sound.answered(Sound.pumped()), "loop.reverse", Level.MIND);
    }

    @Test
    void theSensorThatStartsThePump() {
        Rig rig = Sound.pumped();
        Switch pump = rig.switches().get(0);
        List<Switch> far = new ArrayList<>(rig.switches());
        far.set(
                0,
                Changed.with(
                        pump, "thermostat", new Switch.Thermostat(Rigs.sensor(Switch.Spot.STORE), K + 60, K + 50)));
        answer(rig.switched(far), "control.place", Level.MEND);
        List<Switch> high = new ArrayList<>(rig.switches());
        high.set(
                0,
                Changed.with(
                        pump, "thermostat", new Switch.Thermostat(Rigs.sensor(Switch.Spot.OUTLET), K + 97, K + 80)));
        answer(rig.switched(high), "control.limit", Level.MEND);
        List<Switch> slow = new ArrayList<>(rig.switches());
        Switch.Sensor lazy = new Switch.Sensor(Switch.Spot.OUTLET, 0.9, "", 600);
        slow.set(0, Changed.with(pump, "thermostat", new Switch.Thermostat(lazy, K + 70, K + 58)));
        answer(rig.switched(slow), "control.limit", Level.MEND);
        assertThat(Sound.answered(rig.switched(slow)).of("control.limit").remedy())
                .contains("°C");
    }

    @Test
    void theLoopThatCannotRise() {
        Rig low = Sound.store(Sound.thermosiphon(), "elevation", -2.0);
        answer(low, "loop.rise", Level.STOP);
        Rig pumped = Sound.store(Sound.pumped(), "elevation", -2.0);
        answer(pumped, "loop.rise", Level.MIND);
        Rig upside = Sound.store(Sound.store(Sound.pumped(), "supplyPort", 0.1), "returnPort", 0.9);
        answer(upside, "loop.ports", Level.MEND);
        Rig flap = Sound.loop(Sound.pumped(), "checkValve", 20.0);
        finds(Sound.answered(Sound.pumped()), Sound.answered(flap), "loop.check", Level.MIND);
    }

    @Test
    void narrowPipeRunsFast() {
        Pipe thin = Changed.with(Sound.pumped().loop().back(), "bore", 0.016);
        answer(Sound.loop(Sound.pumped(), "back", thin), "pipe.speed", Level.MEND);
    }

    @Test
    void waterPipesOutdoors() {
        Pipe out = Changed.with(Sound.pumped().loop().back(), "where", Pipe.Where.OUTDOORS);
        answer(Sound.loop(Sound.pumped(), "back", out), "frost.outdoors", Level.MEND);
    }

    @Test
    void glycol() {
        Rig coil = Sound.store(Sound.pumped(), "coil", new Store.Coil(20, 0.02, 0.1, 0.9));
        Rig weak = Sound.loop(coil, "glycol", 0.15);
        Rig strong = Sound.loop(coil, "glycol", 0.4);
        finds(Sound.answered(weak), Sound.answered(strong), "glycol.weak", Level.MEND);
        finds(Sound.answered(strong), Sound.answered(coil), "glycol.cooked", Level.MIND);
    }

    @Test
    void zinc() {
        // the pumped rig's water is at 70 to 80 C, the thermosiphon's below 45
        answer(Sound.material(Sound.pumped(), "tank", Metal.GALVANISED), "zinc.hot", Level.MEND);
        assertThat(Sound.answered(Sound.material(Sound.thermosiphon(), "tank", Metal.GALVANISED))
                        .of("zinc.hot"))
                .isNull();
        answer(Sound.material(Sound.pumped(), "pickup", Metal.GALVANISED), "zinc.fire", Level.STOP);
        Rig both = Sound.material(Sound.material(Sound.pumped(), "tank", Metal.GALVANISED), "pipe", Metal.COPPER);
        answer(both, "zinc.copper", Level.MEND);
        answer(Sound.material(Sound.pumped(), "pipe", Metal.COPPER), "metal.mixed", Level.MIND);
        Rig coil = Sound.store(both, "coil", new Store.Coil(20, 0.02, 0.1, 0.9));
        Rig brine = Sound.loop(coil, "glycol", 0.4);
        finds(Sound.answered(brine), Sound.answered(coil), "zinc.glycol", Level.MEND);
    }

    @Test
    void aPlasticTankIsNotAHotStore() {
        // the store's top comes to 49 C on the normal day
        answer(Sound.material(Sound.pumped(), "tank", Metal.PLASTIC), "plastic.tank", Level.MEND);
        assertThat(Sound.answered(Sound.material(Sound.thermosiphon(), "tank", Metal.PLASTIC))
                        .of("plastic.tank"))
                .isNull();
    }

    @Test
    void plasticPipeThatBoils() {
        answer(Sound.material(Sound.pumped(), "pipe", Metal.PLASTIC), "plastic.hot", Level.MEND);
    }

    @Test
    void theTap() {
        Safety.Tap hot = new Safety.Tap(K + 60);
        Safety.Tap mixed = new Safety.Tap(K + 48);
        Rig broken = Sound.safe(Sound.pumped(), "tap", hot);
        Rig mended = Sound.safe(Sound.pumped(), "tap", mixed);
        finds(Sound.answered(broken), Sound.answered(mended), "scald.tap", Level.MEND);
    }

    @Test
    void bareHotPipe() {
        Pipe bare = Changed.with(Sound.pumped().loop().supply(), "insulation", 0.0);
        answer(Sound.loop(Sound.pumped(), "supply", bare), "scald.pipe", Level.MIND);
    }

    @Test
    void theFloorUnderTheStore() {
        answer(Sound.around(Sound.pumped(), "floorGoodFor", 1900.0), "store.weight", Level.STOP);
        Room boards = Changed.with(
                Sound.pumped().room(),
                "floor",
                new Room.Floor.Boards(List.of(new Layer(0.02, "pine", 0.13, 500, 1600))));
        Rig onBoards = Sound.around(Changed.with(Sound.pumped(), "room", boards), "floorGoodFor", Double.NaN);
        answer(onBoards, "store.weight", Level.MEND);
    }

    @Test
    void flatWallsUnderWater() {
        Rig box = Sound.store(Sound.pumped(), "shape", new Store.Shape.Square(1.2, 2.4, 1.2));
        box = Sound.store(box, "cover", Store.Cover.LOOSE);
        Finding f = Sound.answered(box).of("store.wall");
        assertThat(f.level()).isEqualTo(Level.MEND);
        // 1.2 m deep, 2.4 m long: 17 kN on one side (hydrostatics)
        assertThat(f.why()).contains("17 kN");
        Rig thick = Sound.store(box, "wall", Rigs.layer(0.006, "steel", 50, 7800, 450));
        Rig stiff = Sound.material(thick, "stiffeners", 0.4);
        assertThat(Sound.answered(stiff).of("store.wall").level()).isEqualTo(Level.FINE);
    }

    @Test
    void throttlingIsAnsweredWhereItIsMet() {
        Finding f = Sound.rerun(Rigs.hall()).of("boil.wall");
        assertThat(f.remedy()).contains("Do not throttle");
    }

    @Test
    void aShortChimney() {
        Flue low = Changed.with(Sound.pumped().flue(), "height", 2.5);
        answer(Changed.with(Sound.pumped(), "flue", low), "chimney.short", Level.MIND);
    }
}
