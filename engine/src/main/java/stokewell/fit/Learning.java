package stokewell.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import stokewell.loop.Circuit;
import stokewell.network.Compiler;
import stokewell.network.Driven;
import stokewell.network.Plant;
import stokewell.rig.Layer;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.run.Ledger;
import stokewell.run.Replay;
import stokewell.weather.Weather;

/** Reckons {@link Learnt} from a fit. */
public final class Learning {

    private static final double HOT = 343.15;
    private static final double ROOM = 288.15;
    private static final int DRAWS = 10;
    /** Days that a change is run through: its effect is there by then. */
    private static final double MOST = 8 * 86400.0;

    private static final double FOAM = 0.05;
    private static final double FOAM_CONDUCTIVITY = 0.034;
    /** Second of the day at which a morning counts. */
    private static final double MORNING = 7.5 * 3600;

    private final ShopModel model;
    private final Weather weather;
    private final Estimate estimate;
    private final Readings readings;

    private Learning(ShopModel model, Weather weather, Readings readings, Estimate estimate) {
        this.model = model;
        this.weather = weather;
        this.readings = readings;
        this.estimate = estimate;
    }

    static Learnt from(ShopModel model, Weather weather, Readings readings, Estimate estimate, DoublePredicate goOn) {
        return new Learning(model, weather, readings, estimate).learnt(goOn);
    }

    private Learnt learnt(DoublePredicate goOn) {
        Rig rig = model.rig(estimate.value());
        Learnt.StoreLoss store = null;
        boolean worstIsBase = false;
        if (rig.store() != null) {
            store = new Learnt.StoreLoss(
                    HOT, ROOM, delta(this::loss), delta(r -> 1 - loss(tightBase(r)) / Math.max(1e-9, loss(r))));
            worstIsBase = store.base().value() > 0.5;
        }
        Learnt.LoopFlow loop = null;
        if (rig.loop() != null && rig.loop().pump() != null) {
            loop = new Learnt.LoopFlow(flow(model.rig(new double[estimate.value().length])), delta(this::flow));
        }
        return draws(store, worstIsBase, loop, goOn);
    }

    /** A figure of the rig alone, with its uncertainty by the delta method. */
    private Figure delta(ToDoubleFunction<Rig> figure) {
        double[] p = estimate.value();
        int n = model.knobs().size();
        double middle = figure.applyAsDouble(model.rig(p));
        double[] slope = new double[n];
        for (int j = 0; j < n; j++) {
            double[] up = p.clone();
            up[j] += 0.02;
            slope[j] = (figure.applyAsDouble(model.rig(up)) - middle) / 0.02;
        }
        double variance = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++)
                variance += slope[i] * slope[j] * estimate.covariance().getEntry(i, j);
        }
        return new Figure(middle, estimate.quantile(Fitting.SURE) * Math.sqrt(Math.max(0, variance)));
    }

    /** What the store loses with all its water hot and all else at room temperature, W. */
    private double loss(Rig rig) {
        Plant plant = Compiler.compileEased(rig, weather);
        double[] y = still(plant, ROOM);
        for (int layer : plant.store()) y[Plant.state(layer)] = HOT;
        double[] f = new double[y.length];
        double[] g = new double[plant.network().sums()];
        plant.network().rates(0, y, f, g);
        int accounts = plant.network().wiring().accounts().size();
        List<String> meters = plant.network().wiring().meters();
        double sum = 0;
        for (String name : List.of("store to room", "store to floor")) {
            int at = meters.indexOf(name);
            if (at >= 0) sum += g[accounts + at];
        }
        return sum;
    }

    private static double[] still(Plant plant, double temperature) {
        double[] y = plant.network().start();
        for (int i = 0; i < y.length; i++) if (plant.network().capacity(i) > 0) y[i] = temperature;
        return y;
    }

    private static Rig tightBase(Rig rig) {
        return Altered.of(
                rig,
                "store",
                (Store s) -> Altered.of(
                        s, "base", (Layer b) -> new Layer(2, b.material(), 0.005, b.density(), b.specificHeat())));
    }

    private double flow(Rig rig) {
        Plant plant = Compiler.compileEased(rig, weather);
        Circuit loop = plant.loop();
        for (Driven d : plant.driven()) d.run(d.circuit() == loop);
        double[] y = still(plant, 333.15);
        return loop.standingFlow(plant.network().columns(0, y));
    }

    /** Foam at the side that loses most. */
    private static Rig foamed(Rig rig, boolean base) {
        return Altered.of(rig, "store", (Store s) -> {
            if (base) return Altered.of(s, "base", Learning::thicker);
            Store jacket = Altered.of(s, "jacket", Learning::thicker);
            return Altered.of(jacket, "lid", Learning::thicker);
        });
    }

    /** As much more of the layer's own stuff as is worth the foam. */
    private static Layer thicker(Layer l) {
        double more = FOAM * Math.max(l.conductivity(), 0.005) / FOAM_CONDUCTIVITY;
        return new Layer(
                Math.min(2, l.thickness() + more), l.material(), l.conductivity(), l.density(), l.specificHeat());
    }

    /** What one drawn rig says: its books, and its mornings with and without foam. */
    private record Drawn(Ledger ledger, double[] mornings, double[] foamed) {

        double left() {
            return ledger.accounts().values().stream()
                    .mapToDouble(heat -> Math.max(0, heat))
                    .sum();
        }

        double gave() {
            return ledger.meter("store's heat to room")
                    + ledger.meter("store to room")
                    + ledger.meter("store to floor");
        }
    }

    private Learnt draws(Learnt.StoreLoss store, boolean base, Learnt.LoopFlow loop, DoublePredicate goOn) {
        double[][] draws = drawn();
        double until = Math.min(readings.until(), readings.from() + MOST);
        Drawn[] all = new Drawn[draws.length];
        IntStream.range(0, draws.length).parallel().forEach(k -> {
            if (goOn.test(k / (double) draws.length)) all[k] = one(draws[k], store != null, base, until);
        });
        List<Learnt.Cost> costs = new ArrayList<>();
        if (all[0] != null) {
            for (String account : all[0].ledger().accounts().keySet()) {
                costs.add(new Learnt.Cost(
                        account,
                        figure(all, d -> d.ledger().account(account)),
                        figure(all, d -> Math.max(0, d.ledger().account(account)) / d.left())));
            }
        }
        costs.sort(Comparator.comparingDouble((Learnt.Cost c) -> -c.heat().value()));
        Learnt.Foam foam = null;
        if (store != null && all[0] != null && all[0].foamed() != null) {
            foam = new Learnt.Foam(
                    base ? "base" : "jacket and lid",
                    FOAM,
                    delta(r -> loss(foamed(r, base))),
                    figure(all, d -> d.foamed()[0] - d.mornings()[0]),
                    figure(all, d -> d.foamed()[1] - d.mornings()[1]));
        }
        Learnt.StoreGave gave = null;
        if (store != null && all[0] != null && all[0].gave() > 0) {
            gave = new Learnt.StoreGave(
                    figure(all, Drawn::gave),
                    figure(all, d -> d.ledger().meter("store to floor") / d.gave()),
                    figure(all, d -> d.ledger().meter("store to room") / d.gave()));
        }
        return new Learnt(store, foam, loop, gave, List.copyOf(costs), (until - readings.from()) / 86400);
    }

    private Figure figure(Drawn[] all, ToDoubleFunction<Drawn> of) {
        double middle = of.applyAsDouble(all[0]);
        double sum = 0;
        int n = 0;
        for (int k = 1; k < all.length; k++) {
            if (all[k] == null || (all[k].foamed() == null) != (all[0].foamed() == null)) continue;
            double d = of.applyAsDouble(all[k]) - middle;
            sum += d * d;
            n++;
        }
        return new Figure(middle, estimate.quantile(Fitting.SURE) * Math.sqrt(sum / Math.max(1, n)));
    }

    private Drawn one(double[] p, boolean store, boolean base, double until) {
        Rig rig = model.rig(p);
        Probing.Probes probes = plant -> {
            List<Replay.Probe> list = new ArrayList<>();
            list.add(new Replay.Probe("room", new int[] {plant.room()}, new double[] {1}));
            double all = 0;
            for (double c : plant.storeCapacity()) all += c;
            double[] share = plant.storeCapacity().clone();
            for (int i = 0; i < share.length; i++) share[i] /= all;
            if (share.length > 0) list.add(new Replay.Probe("store", plant.store(), share));
            return list;
        };
        Replay.Played now = model.play(p, rig, probes, until);
        if (now == null) return null;
        double[] mornings = mornings(now);
        double[] then = null;
        if (store) {
            Replay.Played foamed = model.play(p, foamed(rig, base), probes, until);
            if (foamed != null) then = mornings(foamed);
        }
        return new Drawn(now.ledger(), mornings, then);
    }

    /** Means over the mornings of the room and the store. */
    private double[] mornings(Replay.Played played) {
        double[] mean = new double[2];
        int n = 0;
        double origin = weather.start().toLocalTime().toSecondOfDay() + readings.from();
        for (int i = 0; i < played.read()[0].length; i++) {
            double second = (origin + i * ShopModel.STEP) % 86400;
            if (Math.abs(second - MORNING) > 0.5 * ShopModel.STEP || i * ShopModel.STEP < 86400) continue;
            for (int k = 0; k < played.read().length; k++) mean[k] += played.read()[k][i];
            n++;
        }
        for (int k = 0; k < 2; k++) mean[k] /= Math.max(1, n);
        return mean;
    }

    /** The estimate itself, then draws from what is left open, always the same ones. */
    private double[][] drawn() {
        int n = estimate.value().length;
        RealMatrix root = new CholeskyDecomposition(
                        estimate.covariance().add(new Array2DRowRealMatrix(n, n)), 1e-10, 1e-14)
                .getL();
        Random dice = new Random(20);
        double[][] draws = new double[DRAWS + 1][n];
        for (int k = 0; k <= DRAWS; k++) {
            double[] z = new double[n];
            if (k > 0) for (int j = 0; j < n; j++) z[j] = dice.nextGaussian();
            double[] shift = root.operate(z);
            for (int j = 0; j < n; j++) {
                draws[k][j] = model.unknowns().get(j).held(estimate.value()[j] + shift[j]);
            }
        }
        return draws;
    }
}
