package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** How loads and temperatures become days: where a day begins, and which days do not count. */
class WoodPeriodTest {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    private static Series hourly(String name, int days, DoubleUnaryOperator kelvin) {
        int n = 24 * days;
        double[] time = new double[n];
        double[] value = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = i * HOUR;
            value[i] = kelvin.applyAsDouble(i * HOUR);
        }
        return new Series(name, time, value);
    }

    /** Ten kg at eight in the morning of each day but some. */
    private static List<WoodLoad> loads(int days, Integer... without) {
        List<WoodLoad> loads = new ArrayList<>();
        for (int d = 0; d < days; d++) {
            if (!List.of(without).contains(d)) loads.add(new WoodLoad(d * DAY + 8 * HOUR, 10, 0.2));
        }
        return loads;
    }

    private static WoodPeriod period(int days, List<WoodLoad> loads, Series fire, boolean store) {
        Series cold = hourly("outdoor", days, t -> 270);
        Series room = hourly("room", days, t -> 288);
        return WoodPeriod.of(0, days * DAY, loads, cold, room, null, fire, store, 0.2);
    }

    @Test
    void aLoadOfTheSmallHoursBelongsToTheEveningBefore() {
        List<WoodLoad> loads = new ArrayList<>(loads(6));
        loads.add(2, new WoodLoad(2 * DAY + 3 * HOUR, 4, 0.2));
        WoodPeriod p = period(6, loads, null, false);
        assertThat(p.days().get(0).date()).isEqualTo(java.time.LocalDate.of(1970, 1, 1));
        assertThat(p.days().get(1).heat()).isCloseTo(14 * WoodLoad.TOLD_HEAT, within(1.0));
        assertThat(p.days().get(2).heat()).isCloseTo(10 * WoodLoad.TOLD_HEAT, within(1.0));
        assertThat(p.days().get(2).driving(true)).isCloseTo(18, within(1e-9));
        // the last day ends at midnight, before its night is over: it does not count
        assertThat(p.days()).hasSize(5);
    }

    @Test
    void drierWoodIsMoreHeatForItsWeight() {
        double dry = new WoodLoad(0, 1, 0.15).heat(0.2);
        double wet = new WoodLoad(0, 1, 0.35).heat(0.2);
        // ISO 17225-1: 5.1 (1 - w) - 0.679 w kWh/kg
        assertThat(dry / 3.6e6).isCloseTo(5.1 * 0.85 - 0.6786 * 0.15, within(1e-3));
        assertThat(wet / 3.6e6).isCloseTo(5.1 * 0.65 - 0.6786 * 0.35, within(1e-3));
        assertThat(WoodLoad.measured(List.of(new WoodLoad(0, 3, 0.2), new WoodLoad(0, 1, Double.NaN))))
                .isEqualTo(0.75);
    }

    @Test
    void fourColdDaysWithoutALoadAreNotBelievedWhereNothingSeesTheFire() {
        WoodPeriod blind = period(14, loads(14, 4, 5, 6, 7), null, false);
        assertThat(blind.count(WoodDay.Flaw.SILENT)).isEqualTo(4);
        assertThat(period(14, loads(14, 4, 5, 6), null, false).count(WoodDay.Flaw.SILENT))
                .isZero();
        Series cold = hourly("stove", 14, t -> 288);
        WoodPeriod watched = period(14, loads(14, 4, 5, 6, 7), cold, false);
        assertThat(watched.count(WoodDay.Flaw.SILENT)).isZero();
        assertThat(watched.count(WoodDay.Flaw.NONE)).isEqualTo(watched.days().size());
    }

    @Test
    void aFireThatNobodyNotedTakesItsDayOut() {
        // the stove is hot from eight to noon on every day, read once an hour
        Series stove = hourly("stove", 10, t -> t % DAY >= 8 * HOUR && t % DAY < 12 * HOUR ? 420 : 295);
        WoodPeriod p = period(10, loads(10, 3, 6), stove, false);
        assertThat(p.count(WoodDay.Flaw.UNNOTED)).isEqualTo(2);
        assertThat(p.days().get(3).flaw()).isEqualTo(WoodDay.Flaw.UNNOTED);
        assertThat(p.days().get(4).flaw()).isEqualTo(WoodDay.Flaw.NONE);
    }

    @Test
    void aStoreThatClimbsShowsAFireToo() {
        Series store = hourly("store top", 10, t -> {
            double h = t % DAY / HOUR;
            return h < 8 ? 330 - h : h < 14 ? 322 + 4 * (h - 8) : 346 - (h - 14);
        });
        WoodPeriod p = period(10, loads(10, 5), store, true);
        assertThat(p.count(WoodDay.Flaw.UNNOTED)).isEqualTo(1);
        assertThat(p.days().get(5).flaw()).isEqualTo(WoodDay.Flaw.UNNOTED);
    }

    @Test
    void aDayThatWasHardlyReadDoesNotCount() {
        Series full = hourly("outdoor", 8, t -> 270);
        List<Double> time = new ArrayList<>();
        for (double t : full.time()) if (t < 3 * DAY || t > 3 * DAY + 12 * HOUR) time.add(t);
        double[] left = time.stream().mapToDouble(t -> t).toArray();
        double[] value = new double[left.length];
        java.util.Arrays.fill(value, 270);
        WoodPeriod p =
                WoodPeriod.of(0, 8 * DAY, loads(8), new Series("outdoor", left, value), null, null, null, false, 0.2);
        assertThat(p.count(WoodDay.Flaw.UNREAD)).isEqualTo(1);
        assertThat(p.rows(1, false)).hasSize(p.days().size() - 1);
        assertThat(p.rows(3, false).get(0).days()).isEqualTo(3);
    }
}
