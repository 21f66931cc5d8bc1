package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stokewell.rig.Rig;

/** Whole fits on the engine: invented shops whose truth is known. Many more of them: bench/run fit coverage, bench/run fit faults. */
class ShopFitTest {

    private static final List<Knob> FEW =
            List.of(Knob.WALLS, Knob.SLAB, Knob.JACKET, Knob.PICKUP, Knob.PUMP, Knob.WOOD);

    private static final UnaryOperator<Rig> TRUTH = r -> Knob.JACKET.turned(Knob.PUMP.turned(r, 0.6), 1.7);
    private static Fit fit;

    @BeforeAll
    static void fitOnce() {
        FakeShop shop = new FakeShop(5, 1, TRUTH, t -> null, UnaryOperator.identity());
        fit = Fitting.fit(FakeShop.RIG, shop.weather, shop.readings, FEW, List.of(Knob.PUMP, Knob.SLAB), done -> true);
    }

    @Test
    void aPumpThatIsWeakerThanWrittenIsFoundAndItsIntervalHoldsTheTruth() {
        Fit.Factor pump = fit.factor(Knob.PUMP);
        assertThat(pump.differs()).isTrue();
        assertThat(0.6).isBetween(pump.low(), pump.high());
        assertThat(pump.told()).isEqualTo(Fit.Told.WELL);
        Fit.Factor jacket = fit.factor(Knob.JACKET);
        assertThat(1.7).isBetween(jacket.low(), jacket.high());
    }

    @Test
    void mostIntervalsHoldTheTruth() {
        // six intervals of 90 %: fewer than four by chance once in some sixty such fits
        long held = fit.factors().stream()
                .filter(f -> {
                    double right = f.knob() == Knob.PUMP ? 0.6 : f.knob() == Knob.JACKET ? 1.7 : 1;
                    return f.low() <= right && right <= f.high();
                })
                .count();
        assertThat(held).isGreaterThanOrEqualTo(4);
    }

    @Test
    void aNightKeptBackIsPredictedBetterThanByTheDayBefore() {
        assertThat(fit.holdout()).hasSize(3);
        for (Fit.Holdout h : fit.holdout()) {
            if (h.spot() != Spot.ROOM) assertThat(h.rms()).isLessThan(h.persistence());
        }
    }

    @Test
    void whereNothingChangedNothingIsTold() {
        assertThat(fit.watch().deviation()).isNull();
        assertThat(fit.watch().nights()).isNotEmpty();
    }

    @Test
    void theLikelihoodOfWhatIsToldIsSteepAndOfWhatIsHardlyToldIsNot() {
        Profile pump = fit.profiles().get(0);
        assertThat(pump.isFlat()).isFalse();
        Fit.Factor factor = fit.factor(Knob.PUMP);
        // two ways to the same interval; they differ where the model bends
        assertThat(Math.log(pump.high() / pump.low()) / Math.log(factor.high() / factor.low()))
                .isBetween(0.5, 1.6);
        // five days hardly weigh the slab, the loop's temperatures do tell the pump
        assertThat(steepness(fit.profiles().get(1))).isLessThan(0.25 * steepness(pump));
        assertThat(new Profile(
                                Knob.SLAB,
                                new double[] {0.5, 1, 2},
                                new double[] {9, 0, 9},
                                new double[] {2, 0, 2},
                                0.7,
                                1.4)
                        .isFlat())
                .isTrue();
        for (Advice a : fit.advice()) assertThat(a.after()).isLessThan(a.before());
    }

    /** Rise by the readings for each square of the logarithm of the factor, over both ends. */
    private static double steepness(Profile p) {
        int last = p.factor().length - 1;
        double apart = Math.log(p.factor()[last] / p.factor()[0]);
        return (p.told()[0] + p.told()[last]) / (apart * apart);
    }

    @Test
    void whatFollowsCarriesTheUncertaintyOfTheFit() {
        Learnt learnt = fit.learnt();
        assertThat(learnt.store().power().half())
                .isPositive()
                .isLessThan(learnt.store().power().value());
        assertThat(learnt.loop().fitted().value())
                .isLessThan(0.85 * learnt.loop().filed());
        assertThat(learnt.foam().power().value())
                .isLessThan(learnt.store().power().value());
        assertThat(learnt.foam().water().value()).isPositive();
        assertThat(learnt.foam().water().half()).isPositive();
    }

    @Test
    void aPumpThatSlipsFromADayOnIsToldByDayAndCause() {
        double onset = 4 * FakeShop.DAY - 3 * 3600;
        FakeShop shop = new FakeShop(
                7,
                2,
                UnaryOperator.identity(),
                t -> new Rehearsal.Fault(onset, Knob.PUMP.turned(t.rig(), 0.35), 1, null, 0),
                UnaryOperator.identity());
        Watch watch = Fitting.watch(FakeShop.RIG, shop.weather, shop.readings, FEW, done -> true);
        assertThat(watch.deviation()).isNotNull();
        assertThat(watch.deviation().alike())
                .extracting(s -> s.change().cause().name())
                .contains("pump");
        assertThat(Math.abs(watch.deviation().time() - onset)).isLessThan(1.5 * FakeShop.DAY);
    }

    @Test
    void aDoorLeftOpenIsToldAndALeakThatGrowsByATenthIsNot() {
        double onset = 4 * FakeShop.DAY - 3 * 3600;
        List<Knob> knobs = List.of(Knob.WALLS, Knob.LEAKAGE, Knob.JACKET, Knob.PICKUP, Knob.PUMP, Knob.WOOD);
        Watch[] watch = new Watch[2];
        for (int k = 0; k < 2; k++) {
            double factor = k == 0 ? 5 : 1.1;
            FakeShop shop = new FakeShop(
                    7,
                    6,
                    UnaryOperator.identity(),
                    t -> new Rehearsal.Fault(onset, Knob.LEAKAGE.turned(t.rig(), factor), 1, null, 0),
                    UnaryOperator.identity());
            watch[k] = Fitting.watch(FakeShop.RIG, shop.weather, shop.readings, knobs, done -> true);
        }
        assertThat(watch[0].deviation()).isNotNull();
        assertThat(watch[0].deviation().alike())
                .extracting(s -> s.change().cause().name())
                .contains("leakage");
        assertThat(watch[1].deviation()).isNull();
    }

    @Test
    void aSensorThatComesOutOfItsWellIsTold() {
        double onset = 4 * FakeShop.DAY - 3 * 3600;
        FakeShop shop = new FakeShop(
                7,
                3,
                UnaryOperator.identity(),
                t -> new Rehearsal.Fault(onset, t.rig(), 1, Spot.STORE_TOP, 0.4),
                UnaryOperator.identity());
        Watch watch = Fitting.watch(FakeShop.RIG, shop.weather, shop.readings, FEW, done -> true);
        assertThat(watch.deviation()).isNotNull();
        assertThat(watch.deviation().alike())
                .extracting(s -> s.change().cause().name())
                .contains("store top sensor loose");
    }

    @Test
    void aLoadThatNobodyNotedDoesNotMakeALeakOfThePump() {
        FakeShop shop = new FakeShop(
                5,
                4,
                TRUTH,
                t -> null,
                loads -> loads.stream().filter(l -> l != loads.get(9)).toList());
        Fit some = Fitting.fit(FakeShop.RIG, shop.weather, shop.readings, FEW, List.of(), done -> true);
        Fit.Factor pump = some.factor(Knob.PUMP);
        assertThat(0.6).isBetween(pump.low(), pump.high());
    }

    @Test
    void aFitThatIsStoppedEndsAtOnce() {
        AtomicInteger asked = new AtomicInteger();
        FakeShop shop = new FakeShop(3, 5, UnaryOperator.identity(), t -> null, UnaryOperator.identity());
        assertThatThrownBy(() -> Fitting.fit(
                        FakeShop.RIG, shop.weather, shop.readings, FEW, done -> asked.incrementAndGet() < 5))
                .isInstanceOf(CancellationException.class);
        assertThat(asked.get()).isLessThan(5 + FEW.size());
    }
}
