package stokewell.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import stokewell.network.Compiler;
import stokewell.rig.Changed;
import stokewell.rig.Habit;
import stokewell.rig.Outdoors;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Room;
import stokewell.run.Hurry;
import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.run.Standing;
import stokewell.weather.DayRange;
import stokewell.weather.Weather;

/** What a change saves is the wood that may be left away until the room is as warm as before. */
class SameWarmthTest {

    private static final Rig RIG = Rigs.thermosiphon();
    private static final LocalDateTime FROM = LocalDateTime.of(2023, 1, 15, 8, 0);
    private static final NightRun.Ask ASK = new NightRun.Ask(
            FROM, FROM.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, Simulation.TOLERANCE);

    private record Stood(Rig rig, Weather weather, Standing standing, Night night) {

        SameWarmth sameAs(double room) {
            return SameWarmth.of(rig, weather, ASK, night, standing, room);
        }
    }

    private static Stood stood(Rig rig) {
        Outdoors o = rig.weather();
        Weather weather = Weather.day(
                new DayRange(o.low(), o.high()),
                o.wind(),
                o.sun(),
                Compiler.site(rig),
                LocalDate.of(2023, 1, 15),
                Compiler.surfaces(rig));
        NightRun.Settled settled = NightRun.settled(rig, weather, ASK, Hurry.NONE);
        Night night = NightRun.record(settled.simulation(), weather, ASK, "settled");
        return new Stood(rig, weather, settled.standing(), night);
    }

    private static Rig leaking(double changesAt50Pa) {
        Room room = Changed.with(RIG.room(), "leakage", new Room.Leakage(changesAt50Pa / 3600, Room.Shelter.SUBURB));
        return Changed.with(RIG, "room", room);
    }

    private static Rig times(Rig rig, double factor) {
        return rig.fired(((Habit.Clock) rig.habit()).times(factor), rig.stove().air());
    }

    @Test
    void whatTheDraughtNoLongerTakesNeedNotBeBurnt() {
        Stood before = stood(leaking(15));
        Stood tight = stood(leaking(5));
        double room = SameWarmth.room(before.night());
        assertThat(SameWarmth.room(tight.night())).isGreaterThan(room + 0.5);
        SameWarmth same = tight.sameAs(room);
        // found near by, and run here from nowhere: as warm as it was
        Stood lighter = stood(times(tight.rig(), same.factor()));
        assertThat(SameWarmth.room(lighter.night())).isCloseTo(room, within(0.04));
        assertThat(lighter.night().wood()).isCloseTo(same.wood(), within(1e-6 * same.wood()));
        // by hand: of the heat that is no longer brought, what would have stayed in the house would have gone with the
        // draught
        Ledger was = before.night().ledger();
        Ledger is = lighter.night().ledger();
        double saved = was.fuel() - is.fuel();
        double chimney = was.account("flue gas") + was.account("smoke") - is.account("flue gas") - is.account("smoke");
        double air = was.account("air") - is.account("air");
        assertThat(air / saved).isCloseTo(1 - chimney / saved, within(0.1));
    }

    @Test
    void aRigThatIsAsWarmNeedsAsMuch() {
        Stood as = stood(RIG);
        SameWarmth same = as.sameAs(SameWarmth.room(as.night()));
        assertThat(same.factor()).isEqualTo(1);
        assertThat(same.wood()).isEqualTo(as.night().wood());
    }

    @Test
    void aLeakierRigNeedsMore() {
        Stood before = stood(leaking(15));
        SameWarmth same = stood(leaking(20)).sameAs(SameWarmth.room(before.night()));
        assertThat(same.wood()).isGreaterThan(1.02 * before.night().wood());
    }

    @Test
    void whereAWeightDecidesNothingOrNoneIsEnoughItIsNotTold() {
        Stood as = stood(RIG);
        assertThat(as.sameAs(SameWarmth.room(as.night()) + 25)).isNull();
        Rig ruled = RIG.fired(
                new Habit.Rule(5, 413, 8 * 3600, 17 * 3600, Double.NaN),
                RIG.stove().air());
        Stood byRule = stood(ruled);
        assertThat(byRule.sameAs(SameWarmth.room(byRule.night()) - 1)).isNull();
    }
}
