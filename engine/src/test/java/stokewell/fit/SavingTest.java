package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a comparison of two winters promises, held against winters whose saving is known. */
class SavingTest {

    private static final int RUNS = 400;
    private static final double MJ = 1e6;

    /** Winters as they come: short and long, steady and wild, with and without memory, any amount or whole loads. */
    private static InventedWinter winter(Random dice) {
        return new InventedWinter(
                50 + dice.nextInt(70),
                20 * MJ,
                3,
                0.12 + 0.18 * dice.nextDouble(),
                0.6 * dice.nextDouble(),
                dice.nextBoolean() ? 0 : 90 * MJ);
    }

    private static Saving run(InventedWinter before, double share, int daysAfter, Random dice) {
        return Saving.of(
                before.period(16000, dice), before.saving(share, daysAfter).period(16400, dice), true, Double.NaN);
    }

    @Test
    void nineIntervalsOfTenHoldTheTrueSaving() {
        int held = 0;
        int heldAsIndependent = 0;
        for (int run = 0; run < RUNS; run++) {
            Random dice = new Random(run);
            InventedWinter before = winter(dice);
            double truth = 0.5 * dice.nextDouble();
            Saving s = run(before, truth, 25 + dice.nextInt(70), dice);
            if (s.share().low() <= truth && truth <= s.share().high()) held++;
            if (Math.abs(s.share().value() - truth) <= independent(s)) heldAsIndependent++;
        }
        assertThat(held / (double) RUNS).isBetween(0.85, 0.95);
        // the same days taken for independent would promise too much: this test can fail
        assertThat(heldAsIndependent / (double) RUNS).isLessThan(0.85);
    }

    @Test
    void aLaterWinterInMoreSunIsNotTakenForASaving() {
        int held = 0;
        int heldWithout = 0;
        int found = 0;
        for (int run = 0; run < RUNS; run++) {
            Random dice = new Random(30000 + run);
            InventedWinter plain = winter(dice);
            InventedWinter before = new InventedWinter(
                    plain.days(), plain.rate(), plain.free(), plain.scatter(), plain.memory(), plain.load(), 4, 60);
            double truth = 0.4 * dice.nextDouble();
            WoodPeriod first = before.period(16000, dice);
            WoodPeriod second =
                    before.saving(truth, 30 + dice.nextInt(60)).under(110).period(16400, dice);
            Saving s = Saving.of(first, second, true, Double.NaN);
            if (s.line().sunny()) found++;
            if (s.share().low() <= truth && truth <= s.share().high()) held++;
            Saving without = Saving.of(dark(first), dark(second), true, Double.NaN);
            if (without.share().low() <= truth && truth <= without.share().high()) heldWithout++;
        }
        assertThat(held / (double) RUNS).isBetween(0.85, 0.95);
        // the same days without the sun promise a saving that the sun made: this test can fail
        assertThat(heldWithout / (double) RUNS).isLessThan(0.8);
        assertThat(found).isEqualTo(RUNS);
    }

    @Test
    void aSunThatWarmsNothingIsLeftOutOfTheLine() {
        int found = 0;
        int held = 0;
        for (int run = 0; run < RUNS; run++) {
            Random dice = new Random(50000 + run);
            InventedWinter plain = winter(dice);
            InventedWinter before = new InventedWinter(
                    plain.days(), plain.rate(), plain.free(), plain.scatter(), plain.memory(), plain.load(), 0, 60);
            WoodPeriod second = before.saving(0.2, 30 + dice.nextInt(60)).period(16400, dice);
            Saving s = Saving.of(before.period(16000, dice), second, true, Double.NaN);
            if (s.line().showsSun()) found++;
            if (s.share().low() <= 0.2 && 0.2 <= s.share().high()) held++;
        }
        // two and a half in a hundred by chance on one side, some more by rows that are alike
        assertThat(found / (double) RUNS).isLessThan(0.06);
        assertThat(held / (double) RUNS).isBetween(0.85, 0.95);
    }

    private static WoodPeriod dark(WoodPeriod p) {
        return new WoodPeriod(
                p.days().stream()
                        .map(d -> new WoodDay(d.date(), d.heat(), d.loads(), d.outdoor(), d.indoor(), d.flaw()))
                        .toList(),
                p.loads(),
                p.watched());
    }

    /** Half the interval if no day resembled the next. */
    private static double independent(Saving s) {
        double line = s.line().effective() / s.line().rows();
        double own = s.afterLine().effective() / s.afterLine().rows();
        return 1.645
                * Math.sqrt(s.lineShare() * s.lineShare() * line + s.dayShare() * s.dayShare() / s.daysAfter() * own);
    }

    @Test
    void whereNothingWasSavedNothingIsProven() {
        int silent = 0;
        for (int run = 0; run < 1000; run++) {
            Random dice = new Random(7000 + run);
            if (run(winter(dice), 0, 25 + dice.nextInt(70), dice).verdict() == Saving.Verdict.NOT_PROVEN) silent++;
        }
        // of the tenth that is left, half says less and half says more
        assertThat(silent / 1000.0).isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void moreWoodIsToldAsMore() {
        Random dice = new Random(5);
        Saving s = run(new InventedWinter(100, 20 * MJ, 3, 0.15, 0.3, 0), -0.3, 80, dice);
        assertThat(s.verdict()).isEqualTo(Saving.Verdict.MORE);
        assertThat(s.share().value()).isCloseTo(-0.3, within(0.1));
    }

    @Test
    void theDaysToGoAreAboutRight() {
        List<Double> ratio = new ArrayList<>();
        int proven = 0;
        int asked = 0;
        for (int run = 0; run < 1500 && asked < 150; run++) {
            Random dice = new Random(90000 + run);
            InventedWinter before = new InventedWinter(110, 20 * MJ, 3, 0.25, 0.4, 0);
            InventedWinter after = before.saving(0.12, 150);
            WoodPeriod first = before.period(16000, dice);
            WoodPeriod whole = after.period(16400, dice);
            Saving early = Saving.of(first, part(whole, 20), true, Double.NaN);
            int more = early.daysToGo();
            // those that happen to see the saving at about its size: the promise is for a saving that stays as it looks
            if (more <= 0 || more > 130 || Math.abs(early.share().value() - 0.12) > 0.03) continue;
            asked++;
            Saving late = Saving.of(first, part(whole, 20 + more), true, Double.NaN);
            ratio.add(late.share().half() / early.halfAfter(20 + more));
            if (late.verdict() == Saving.Verdict.LESS) proven++;
        }
        assertThat(asked).isEqualTo(150);
        double[] sorted = ratio.stream().mapToDouble(r -> r).sorted().toArray();
        assertThat(sorted[sorted.length / 2]).isBetween(0.85, 1.15);
        // "as likely as not"
        assertThat(proven / (double) asked).isBetween(0.35, 0.65);
    }

    private static WoodPeriod part(WoodPeriod p, int days) {
        return new WoodPeriod(p.days().subList(0, Math.min(days, p.days().size())), List.of(), true);
    }

    @Test
    void warmthTakenInsteadOfWoodCountsAsSaved() {
        Random dice = new Random(11);
        InventedWinter before = new InventedWinter(100, 20 * MJ, 3, 0.1, 0.2, 0);
        WoodPeriod cold = before.period(16000, dice);
        WoodPeriod same = before.saving(0.25, 90).period(16400, dice);
        // the same wood as the better rig needs, and 3 K more in the room: what the room took is put back
        List<WoodDay> warm = same.days().stream()
                .map(d -> new WoodDay(
                        d.date(), d.heat() + 0.75 * 20 * MJ * 3, d.loads(), d.outdoor(), d.indoor() + 3, d.flaw()))
                .toList();
        WoodPeriod warmer = new WoodPeriod(warm, List.of(), true);
        Saving byRoom = Saving.of(cold, warmer, true, Double.NaN);
        Saving byWeather = Saving.of(cold, warmer, false, Double.NaN);
        assertThat(byRoom.share().value()).isCloseTo(0.25, within(0.06));
        assertThat(byWeather.share().value()).isLessThan(byRoom.share().value() - 0.08);
    }

    @Test
    void tooFewDaysAreRefused() {
        Random dice = new Random(1);
        InventedWinter w = new InventedWinter(8, 20 * MJ, 3, 0.1, 0, 0);
        assertThatThrownBy(() -> run(w, 0.2, 60, dice))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the period before has 8 days that can be used, and needs 10");
    }

    @Test
    void lumpyLoadsArePutTogetherToLongerRows() {
        Random dice = new Random(3);
        Saving steady = run(new InventedWinter(100, 20 * MJ, 3, 0.1, 0, 0), 0.2, 60, dice);
        Saving lumpy = run(new InventedWinter(100, 20 * MJ, 3, 0.1, 0, 500 * MJ), 0.2, 60, dice);
        assertThat(steady.length()).isEqualTo(1);
        assertThat(lumpy.length()).isGreaterThan(1);
        assertThat(lumpy.share().value()).isCloseTo(0.2, within(0.08));
    }

    @Test
    void cavityWallInsulationSavedWhatTheTextbookDataSay() {
        // weekly gas before and after cavity walls were filled: D. Whiteside in Hand et al., A Handbook of Small Data
        // Sets
        // (1993) p. 69. Expected: numpy 2.4.6, least squares of each winter
        Saving s = Saving.of(weeks(Published.WALLS_BEFORE, 0), weeks(Published.WALLS_AFTER, 500), false, Double.NaN);
        assertThat(s.adjusted()).isCloseTo(5.098671755725188, within(1e-9));
        assertThat(s.burnt()).isCloseTo(3.483333333333333, within(1e-9));
        assertThat(s.share().value()).isCloseTo(0.3168155354535279, within(1e-9));
        double apart = s.line().effective() / s.line().rows();
        double few = 1 + 2 / s.line().effective();
        assertThat(s.lineShare())
                .isCloseTo(
                        s.burnt() / s.adjusted() * Math.sqrt(few * 0.0033457666915472127 / apart) / s.adjusted(),
                        within(1e-9));
        assertThat(s.verdict()).isEqualTo(Saving.Verdict.LESS);
    }

    private static WoodPeriod weeks(double[][] rows, long first) {
        List<WoodDay> days = new ArrayList<>();
        for (double[] r : rows) {
            LocalDate date = LocalDate.ofEpochDay(first + days.size());
            days.add(new WoodDay(date, r[1], 1, 273.15 + r[0], Double.NaN, WoodDay.Flaw.NONE));
        }
        return new WoodPeriod(days, List.of(), true);
    }

    @Test
    void theShortFormulaOfTheGuidelineIsNear() {
        // t 1.26 CV sqrt(n/n' (1 + 2/n') / m): ASHRAE Guideline 14 and Reddy and Claridge (2000), from memory. It takes
        // the
        // scatter of the period before for that of the period after, so that it is larger where wood is saved
        double[] ratio = new double[100];
        for (int run = 0; run < ratio.length; run++) {
            Random dice = new Random(run);
            Saving s = run(new InventedWinter(100, 20 * MJ, 3, 0.2, 0.3, 0), 0.1, 90, dice);
            ratio[run] = s.published() / s.share().half();
        }
        Arrays.sort(ratio);
        assertThat(ratio[50]).isBetween(0.7, 1.3);
    }
}
