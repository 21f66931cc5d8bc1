package stokewell.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.network.Compiler;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.run.Trace;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

class FirstFireTest {

    private static final double COLD = 283.15;

    static FirstFire lit(Rig rig) {
        Site site = Compiler.site(rig);
        DayRange range = new DayRange(rig.weather().low(), rig.weather().high());
        Weather weather = Weather.day(range, 3, 0.4, site, LocalDate.of(2023, 1, 15), Compiler.surfaces(rig));
        return FirstFire.run(rig, weather, LocalDateTime.of(2023, 1, 16, 8, 0));
    }

    @ParameterizedTest
    @MethodSource("stokewell.rig.Rigs#all")
    void everythingStartsColdAndOneSmallLoadIsBurnt(Rig rig) {
        FirstFire f = lit(rig);
        Trace t = f.night().trace();
        assertThat(t.value("stove", 0)).isCloseTo(COLD, within(0.5));
        assertThat(t.value("room", 0)).isCloseTo(COLD, within(0.5));
        if (rig.store() != null) assertThat(t.value("store 1", 0)).isCloseTo(COLD, within(0.1));
        assertThat(f.night().loads()).isEqualTo(1);
        assertThat(f.night().wood()).isCloseTo(f.mass(), within(1e-6));
        assertThat(f.mass()).isBetween(1.0, 0.65 * Math.max(2, FirstFire.usual(rig)));
        // it warms the stove, is a fire and no more than one, and the books close
        assertThat(t.value("stove", f.at(45))).isGreaterThan(COLD + 5);
        assertThat(t.value("bed", f.at(239))).isLessThan(0.5 * f.mass());
        assertThat(f.night().ledger().relativeResidual()).isLessThan(1e-6);
    }

    @ParameterizedTest
    @MethodSource("stokewell.rig.Rigs#all")
    void itDoesNotBoil(Rig rig) {
        assertThat(lit(rig).night().boilingMinutes()).isZero();
    }

    /** The pump starts after the fire and before the water could be over its low limit for long; the trace agrees. */
    @Test
    void thePumpStartsAndTheMinutesAgree() {
        FirstFire f = lit(Rigs.pumped());
        double starts = f.starts("pump");
        assertThat(starts).isBetween(3.0, 240.0);
        assertThat(f.ranSince(0, starts - 0.1)).isFalse();
        assertThat(f.ranSince(starts - 0.1, starts + 0.1)).isTrue();
        assertThat(f.starts("no such thing")).isNaN();
    }

    @Test
    void aHabitWithoutLoadsIsReckonedFromTheFirebox() {
        Rig p = Rigs.pumped();
        Rig none = p.fired(
                new Habit.Clock(java.util.List.of(), Double.NaN), p.stove().air());
        assertThat(FirstFire.usual(none)).isCloseTo(150 * p.stove().firebox(), within(1e-9));
    }
}
