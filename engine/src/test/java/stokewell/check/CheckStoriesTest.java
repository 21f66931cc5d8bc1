package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Flue;
import stokewell.rig.Fuel;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

/** What went wrong for others: the rig of each story gets the finding that would have prevented it, the mended one does not. */
class CheckStoriesTest {

    @Test
    void theFrozenAwayHouse() {
        Found.answer(Sound.around(Sound.pumped(), "coldAndFull", 14 * 86400), "frost.run", Level.STOP);
        Found.answer(Sound.relief(Sound.pumped(), "atStove", false), "relief.place", Level.MEND);
        Rig alone = Sound.safe(Sound.pumped(), "relief", null);
        Found.finds(Sound.rerun(alone), Sound.answered(Sound.pumped()), "relief.second", Level.MEND);
    }

    @Test
    void theForgottenPumpSwitch() {
        Found.answer(Sound.around(Sound.pumped(), "handSwitch", true), "control.hand", Level.STOP);
        Rig undriven = Sound.pumped().switched(List.of(Sound.pumped().switches().get(1)));
        Found.finds(Sound.rerun(undriven), Sound.answered(Sound.pumped()), "control.hand", Level.STOP);
    }

    @Test
    void solderThenWeld() {
        Found.answer(Sound.material(Sound.pumped(), "soldered", true), "metal.solder", Level.STOP);
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
        Found.answer(Sound.material(Sound.pumped(), "plasticFromStove", 0.5), "plastic.near", Level.STOP);
        Found.answer(Sound.material(Sound.pumped(), "plasticFromStove", 1.5), "plastic.near", Level.MEND);
    }

    @Test
    void theNightPumpDeath() {
        Found.answer(Sound.around(Sound.pumped(), "hotAlarm", false), "boil.alarm", Level.MEND);
        Rig alone = Sound.around(Sound.around(Sound.pumped(), "hotAlarm", false), "unwatched", 6 * 3600);
        Found.answer(alone, "watch.unwatched", Level.MEND);
    }

    @Test
    void furnitureWood() {
        Rig rig = Changed.with(Sound.pumped(), "fuel", new Fuel("pine", 0.08, Fuel.Basis.WET, Fuel.Form.OFFCUTS, 0.6));
        Found.answer(rig, "fuel.offcuts", Level.MIND);
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
        Found.answer(Changed.with(Sound.pumped(), "flue", tall), "chimney.tall", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("chimney.tall")).isNull();
    }

    @Test
    void theThreeHundredGallonSurprise() {
        Found.answer(Sound.around(Sound.pumped(), "levelWatched", false), "water.level", Level.MEND);
        Rig shallow = Sound.store(Sound.thermosiphon(), "supplyPort", 0.92);
        Rig mended = Sound.store(Sound.thermosiphon(), "supplyPort", 0.7);
        Found.finds(Sound.answered(shallow), Sound.answered(mended), "loop.level", Level.MEND);
    }

    @Test
    void theSweatingFirebox() {
        Finding f = Sound.answered(Sound.pumped()).of("return.cold");
        assertThat(f.level()).isEqualTo(Level.MIND);
        assertThat(f.why()).contains("Turning the store down makes it worse");
    }

    @Test
    void thePluggedReliefOutlet() {
        Found.answer(Sound.relief(Sound.pumped(), "clearOutlet", false), "relief.outlet", Level.MEND);
    }

    @Test
    void monoxideAtTheCoalStage() {
        Found.answer(Sound.around(Sound.pumped(), "monoxideAlarm", false), "air.monoxide", Level.MEND);
        Found.answer(Sound.around(Sound.pumped(), "exhaust", 0.4), "air.exhaust", Level.MEND);
        assertThat(Sound.answered(Rigs.pumped()).of("air.monoxide").why()).contains("not low");
    }

    @Test
    void theGoodStoryOfTheInhibitor() {
        Found.answer(Sound.material(Sound.pumped(), "inhibitor", false), "water.treated", Level.MIND);
        assertThat(Sound.answered(Sound.pumped()).of("water.treated").level()).isEqualTo(Level.FINE);
    }
}
