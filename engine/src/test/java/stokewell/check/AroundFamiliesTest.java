package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Rules on what stands round the rig and on its fire: each finds what is wrong, and not on the rig that is mended. */
class AroundFamiliesTest {

    private static final double K = 273.15;

    @Test
    void vapoursAndGaragesComeFirst() {
        Found.answer(Sound.around(Sound.pumped(), "flammables", true), "vapours.present", Level.STOP);
        Found.answer(Sound.around(Sound.pumped(), "garage", true), "vapours.garage", Level.STOP);
        Rig both = Sound.safe(Sound.around(Sound.pumped(), "flammables", true), "valveToOpen", true);
        assertThat(Sound.answered(both).findings().get(0).id()).isEqualTo("vapours.present");
    }

    @Test
    void clearances() {
        Found.answer(Sound.around(Sound.pumped(), "clearance", 0.5), "clearance.stove", Level.MEND);
        Found.answer(Sound.around(Sound.pumped(), "clearance", 0.2), "clearance.stove", Level.STOP);
        Rig shielded = Sound.around(Sound.around(Sound.pumped(), "clearance", 0.4), "shielded", true);
        assertThat(Sound.answered(shielded).of("clearance.stove").level()).isEqualTo(Level.FINE);
        Found.answer(Sound.around(Sound.pumped(), "connectorClearance", 0.2), "clearance.connector", Level.MEND);
    }

    @Test
    void wiringNearWaterAndHeat() {
        Found.answer(Sound.around(Sound.pumped(), "breaker", false), "wiring.breaker", Level.MEND);
        Found.answer(Sound.around(Sound.pumped(), "cablesClear", false), "wiring.cables", Level.MEND);
        Found.answer(Sound.around(Sound.pumped(), "bonded", false), "wiring.bond", Level.MEND);
        for (String id : List.of("wiring.breaker", "wiring.cables", "wiring.bond")) {
            assertThat(Sound.answered(Rigs.pumped()).of(id).level()).isEqualTo(Level.MIND);
            assertThat(Sound.answered(Sound.pumped()).of(id)).isNull();
        }
    }

    @Test
    void airForTheStoveAndDust() {
        Room tight = Changed.with(
                Sound.pumped().room(),
                "leakage",
                Changed.with(Sound.pumped().room().leakage(), "at50Pa", 0.2 / 3600));
        Rig closed = Sound.around(Changed.with(Sound.pumped(), "room", tight), "airOpening", 0.0);
        Found.answer(closed, "air.stove", Level.MEND);
        assertThat(Sound.answered(Sound.around(closed, "airOpening", 0.03))
                        .of("air.stove")
                        .level())
                .isEqualTo(Level.FINE);
        Found.answer(Sound.around(Sound.pumped(), "exhaust", 0.05), "air.dust", Level.MIND);
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
        Found.answer(Sound.around(Sound.pumped(), "coalsOut", false), "care.coals", Level.MEND);
        assertThat(Sound.answered(Sound.around(Sound.pumped(), "coalsOut", false))
                        .of("care.coals")
                        .remedy())
                .contains("compost");
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
        Found.answer(wet, "fuel.wet", Level.MEND);
        assertThat(Sound.answered(wet).of("fuel.wet").why()).contains("few percent");
    }

    @Test
    void theStoreThatHeatsTheChimneyAtNight() {
        Rig low = Sound.loop(Sound.store(Sound.pumped(), "elevation", 0.0), "checkValve", Double.NaN);
        Pipe wide = new Pipe(3, 0.04, 0.003, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
        low = Sound.loop(Sound.loop(low, "supply", wide), "back", wide);
        low = Changed.with(low, "pickups", List.of(Changed.with(low.pickups().get(0), "elevation", 1.6)));
        Found.finds(Sound.rerun(low), Sound.answered(Sound.pumped()), "loop.reverse", Level.MIND);
    }

    @Test
    void theTap() {
        Safety.Tap hot = new Safety.Tap(K + 60);
        Safety.Tap mixed = new Safety.Tap(K + 48);
        Rig broken = Sound.safe(Sound.pumped(), "tap", hot);
        Rig mended = Sound.safe(Sound.pumped(), "tap", mixed);
        Found.finds(Sound.answered(broken), Sound.answered(mended), "scald.tap", Level.MEND);
    }

    @Test
    void bareHotPipe() {
        Pipe bare = Changed.with(Sound.pumped().loop().supply(), "insulation", 0.0);
        Found.answer(Sound.loop(Sound.pumped(), "supply", bare), "scald.pipe", Level.MIND);
    }

    @Test
    void theFloorUnderTheStore() {
        Found.answer(Sound.around(Sound.pumped(), "floorGoodFor", 1900.0), "store.weight", Level.STOP);
        Room boards = Changed.with(
                Sound.pumped().room(),
                "floor",
                new Room.Floor.Boards(List.of(new Layer(0.02, "pine", 0.13, 500, 1600))));
        Rig onBoards = Sound.around(Changed.with(Sound.pumped(), "room", boards), "floorGoodFor", Double.NaN);
        Found.answer(onBoards, "store.weight", Level.MEND);
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
        Found.answer(Changed.with(Sound.pumped(), "flue", low), "chimney.short", Level.MIND);
    }
}
