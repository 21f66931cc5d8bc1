package stokewell.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeatherTest {

    private static final Site SITE = SunTest.site(45, 8, 1, 250);
    private static final LocalDateTime NEW_YEAR = LocalDateTime.of(2001, 1, 1, 0, 30);
    private static final List<Surface> SURFACES =
            List.of(Surface.HORIZONTAL, new Surface(Math.PI / 2, Math.PI), new Surface(0.6, 4));

    private static double[] hours(int n, IntToDoubleFunction f) {
        return IntStream.range(0, n).mapToDouble(f).toArray();
    }

    /** Rough weather: a season, a day and noise, so that no smoothness of the data hides a fault of the curves. */
    private static Hourly rough(int n) {
        var random = new Random(7);
        double[] temperature = hours(
                n,
                i -> 280
                        - 12 * Math.cos(2 * Math.PI * i / 8760.0)
                        - 5 * Math.cos(2 * Math.PI * (i - 3) / 24.0)
                        + random.nextGaussian());
        double[] wind = hours(n, i -> Math.max(0, 3 + 3 * random.nextGaussian()));
        var light = new Sunlight(NEW_YEAR, 3600, n, SITE, List.of());
        return new Hourly(NEW_YEAR, temperature, wind)
                .withSun(new Hourly.Sun(light.shareOfClearSky(0.6), Optional.empty(), Optional.empty(), 0));
    }

    @Test
    void temperatureGoesThroughEveryHour() {
        for (Hourly hourly : List.of(rough(240), rough(8760).wrapped())) {
            Weather weather = Weather.of(hourly, SITE, List.of());
            double[] expected = hourly.temperature();
            for (int i = 0; i < hourly.hours(); i++) {
                assertThat(weather.temperatureAt(3600.0 * i)).isCloseTo(expected[i], within(1e-9));
            }
        }
    }

    @Test
    void curvesHaveNoKinksAtTheHour() {
        Weather weather = Weather.of(rough(8760).wrapped(), SITE, SURFACES);
        int n = weather.channels();
        double[] before = new double[n];
        double[] after = new double[n];
        double[] mid = new double[n];
        double h = 1;
        for (int i = -30; i < 60; i++) {
            double t = 3600.0 * i;
            weather.slopeAt(t - h, before);
            weather.slopeAt(t, mid);
            weather.slopeAt(t + h, after);
            for (int c = 0; c < n; c++) {
                // a step of the second derivative would show as a difference that does not shrink with h
                double left = (mid[c] - before[c]) / h;
                double right = (after[c] - mid[c]) / h;
                assertThat(right).isCloseTo(left, within(2e-7 * (c < Weather.SUN ? 1 : 100) * h));
            }
        }
    }

    @Test
    void slopeIsTheDerivative() {
        Weather weather = Weather.of(rough(8760).wrapped(), SITE, SURFACES);
        double[] low = new double[weather.channels()];
        double[] high = new double[weather.channels()];
        double[] slope = new double[weather.channels()];
        for (double t = 0.37 * 3600; t < 9e5; t += 7919) {
            weather.at(t - 5, low);
            weather.at(t + 5, high);
            weather.slopeAt(t, slope);
            for (int c = 0; c < slope.length; c++) {
                assertThat(slope[c]).isCloseTo((high[c] - low[c]) / 10, within(2e-6 + 1e-4 * Math.abs(slope[c])));
            }
        }
    }

    @Test
    void windAndSunKeepTheirTotalsAndAreNeverNegative() {
        Hourly hourly = rough(8760).wrapped();
        Weather weather = Weather.of(hourly, SITE, SURFACES);
        double[] out = new double[weather.channels()];
        double wind = 0;
        double sun = 0;
        // Two points an hour at the Gauss places integrate a cubic exactly
        double gauss = 0.5 / Math.sqrt(3);
        for (int i = 0; i < 8760; i++) {
            for (double place : new double[] {0.5 - gauss, 0.5 + gauss}) {
                weather.at(3600 * (i + place), out);
                assertThat(out[Weather.WIND]).isNotNegative();
                assertThat(out[Weather.SUN]).isNotNegative();
                assertThat(out[Weather.SUN + 1]).isNotNegative();
                wind += out[Weather.WIND] / 2;
                sun += out[Weather.SUN] / 2;
            }
        }
        assertThat(wind).isCloseTo(Arrays.stream(hourly.wind()).sum(), within(1e-6));
        assertThat(sun)
                .isCloseTo(Arrays.stream(hourly.sun().orElseThrow().global()).sum(), within(1e-4));
    }

    @Test
    void sunStampedAtTheEndOfTheHourComesHalfAnHourSooner() {
        Hourly hourly = rough(240);
        double[] global = hourly.sun().orElseThrow().global();
        Hourly ended = hourly.withSun(new Hourly.Sun(global, Optional.empty(), Optional.empty(), -1800));
        double[] a = new double[4];
        double[] b = new double[4];
        Weather.of(hourly, SITE, List.of(Surface.HORIZONTAL)).at(36 * 3600, a);
        Weather.of(ended, SITE, List.of(Surface.HORIZONTAL)).at(36 * 3600 - 1800, b);
        assertThat(b[Weather.SUN]).isCloseTo(a[Weather.SUN], within(1e-9));
    }

    @Test
    void winterRunsThroughTheEndOfATypicalYear() {
        Hourly year = rough(8760).wrapped();
        Weather winter = Weather.of(year, SITE, List.of(), LocalDateTime.of(2026, 10, 1, 0, 30));
        double toNewYear = 92 * 86400.0;
        assertThat(winter.temperatureAt(0)).isCloseTo(year.temperature()[273 * 24], within(1e-9));
        assertThat(winter.temperatureAt(toNewYear)).isCloseTo(year.temperature()[0], within(1e-9));
        assertThat(winter.temperatureAt(toNewYear - 3600)).isCloseTo(year.temperature()[8759], within(1e-9));
        assertThat(winter.covers(0, 5e7)).isTrue();
    }

    @Test
    void leapDayStartsAndFullLeapYearsWork() {
        Weather year = Weather.of(rough(8760).wrapped(), SITE, List.of());
        Weather leap = year.from(LocalDateTime.of(2024, 2, 29, 12, 0));
        Weather plain = year.from(LocalDateTime.of(2023, 2, 28, 12, 0));
        assertThat(leap.temperatureAt(5000)).isEqualTo(plain.temperatureAt(5000));
        assertThat(rough(8784).wrapped().hours()).isEqualTo(8784);
        assertThat(rough(8758).wrapped().hours()).isEqualTo(8760);
        assertThatThrownBy(() -> rough(8736).wrapped()).hasMessageContaining("8736 hours");
    }

    @Test
    void easedJoinKeepsTheMeanAndShrinksTheJump() {
        Hourly step = new Hourly(NEW_YEAR, hours(96, i -> i < 48 ? 270 : 280), hours(96, i -> 0));
        double[] eased = step.eased(48).temperature();
        assertThat(eased[48] - eased[47]).isLessThan(1);
        assertThat(Arrays.stream(eased).sum())
                .isCloseTo(Arrays.stream(step.temperature()).sum(), within(1e-9));
        assertThat(eased[41]).isEqualTo(270);
        assertThat(eased[54]).isEqualTo(280);
    }

    @Test
    void plainDayHitsItsLowAndHighAtTheirHours() {
        Weather day = Weather.day(
                new DayRange(263.15, 273.15), 2, 0.7, SITE, LocalDate.of(2024, 1, 20), List.of(Surface.HORIZONTAL));
        assertThat(day.temperatureAt(6.5 * 3600)).isCloseTo(263.15, within(1e-9));
        assertThat(day.temperatureAt((15 + 72) * 3600)).isCloseTo(273.15, within(1e-9));
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double t = 0; t < 86400; t += 60) {
            low = Math.min(low, day.temperatureAt(t));
            high = Math.max(high, day.temperatureAt(t));
        }
        // the spline through half-hours may pass the extremes by a trace
        assertThat(low).isCloseTo(263.15, within(0.02));
        assertThat(high).isCloseTo(273.15, within(0.02));
        double[] night = new double[4];
        day.at(0, night);
        assertThat(night[Weather.SUN]).isZero();
        assertThat(night[Weather.WIND]).isCloseTo(2, within(1e-12));
        assertThat(night[Weather.SKY]).isLessThan(night[Weather.TEMPERATURE]);
    }

    @Test
    void coldSnapFallsStaysAndPasses() {
        Weather snap = Weather.coldSnap(
                new DayRange(268, 276),
                new DayRange(243, 253),
                3,
                4,
                2,
                3,
                0.5,
                SITE,
                LocalDate.of(2024, 1, 10),
                List.of());
        assertThat(snap.span()).isEqualTo(11 * 86400.0);
        assertThat(snap.temperatureAt((2 * 24 + 15) * 3600.0)).isCloseTo(276, within(1e-9));
        for (int day = 4; day < 8; day++) {
            assertThat(snap.temperatureAt((day * 24 + 6.5) * 3600.0)).isCloseTo(243, within(1e-9));
            assertThat(snap.temperatureAt((day * 24 + 15) * 3600.0)).isCloseTo(253, within(1e-9));
        }
        assertThat(snap.temperatureAt((9 * 24 + 15) * 3600.0)).isCloseTo(276, within(1e-9));
    }

    @Test
    void meanDayIsTheMeanOfTheDays() {
        Hourly hourly = rough(24 * 20);
        Weather weather = Weather.of(hourly, SITE, SURFACES);
        Weather mean = weather.meanDay(NEW_YEAR.plusDays(2), NEW_YEAR.plusDays(12));
        double[] all = new double[weather.channels()];
        double[] one = new double[weather.channels()];
        for (double t = 1800; t < 86400; t += 4321) {
            double[] sum = new double[all.length];
            for (int day = 2; day < 12; day++) {
                weather.at(t + day * 86400.0, all);
                for (int c = 0; c < all.length; c++) {
                    sum[c] += all[c] / 10;
                }
            }
            mean.at(t, one);
            // away from midnight, where the span's ends meet
            if (t > 3 * 3600 && t < 21 * 3600) {
                assertThat(one).containsExactly(sum, within(1e-9));
            }
        }
        assertThat(mean.repeats()).isTrue();
        assertThatThrownBy(() -> weather.meanDay(NEW_YEAR, NEW_YEAR.plusDays(21)))
                .hasMessageContaining("inside the record");
    }

    @Test
    void meanDayOfAWinterRunsThroughNewYear() {
        Weather year = Weather.of(rough(8760).wrapped(), SITE, SURFACES);
        Weather winter = year.meanDay(LocalDateTime.of(2025, 12, 1, 0, 30), LocalDateTime.of(2026, 2, 1, 0, 30));
        double expected = 0;
        for (int i = 0; i < 62 * 24; i++) {
            expected += year.temperatureAt(3600.0 * (334 * 24 + i)) / (62 * 24);
        }
        // the curves' ends of the span reach one hour over it, on one of 1488 hours
        assertThat(winter.meanTemperature()).isCloseTo(expected, within(1e-3));
    }

    @Test
    void degreeDaysOfASteadyColdAreItsDepth() {
        Hourly hourly = new Hourly(NEW_YEAR, hours(240, i -> 273.15), hours(240, i -> 1));
        assertThat(hourly.degreeDays(288.15)).isCloseTo(150, within(1e-9));
        assertThat(Weather.of(hourly, SITE, List.of()).degreeDays(288.15, 0, 864000))
                .isCloseTo(150, within(1e-6));
        assertThat(hourly.meanTemperature()).isCloseTo(273.15, within(1e-9));
    }

    @Test
    void recordIsRefusedWithHoles() {
        assertThatThrownBy(() -> new Hourly(NEW_YEAR, hours(48, i -> i == 9 ? Double.NaN : 280), hours(48, i -> 1)))
                .hasMessageContaining("temperature");
        assertThatThrownBy(() -> new Hourly(NEW_YEAR, hours(48, i -> 280), hours(47, i -> 1)))
                .hasMessageContaining("47 hours, not 48");
    }

    @Test
    void withoutMeasuredSunOneIsModelledAndSaid() {
        Hourly dark = new Hourly(NEW_YEAR, rough(240).temperature(), rough(240).wind());
        Weather weather = Weather.of(dark, SITE, List.of(Surface.HORIZONTAL));
        double[] noon = new double[4];
        weather.at(12 * 3600, noon);
        assertThat(weather.sunModelled()).isTrue();
        assertThat(noon[Weather.SUN]).isBetween(50.0, 450.0);
    }

    @Test
    void recordThatDoesNotRepeatSaysWhereItEnds() {
        Weather weather = Weather.of(rough(240), SITE, List.of());
        assertThat(weather.covers(0, 239 * 3600)).isTrue();
        assertThat(weather.covers(0, 240 * 3600)).isFalse();
        assertThat(weather.temperatureAt(1e7)).isCloseTo(rough(240).temperature()[239], within(1e-9));
    }
}
