package stokewell.show;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import stokewell.fit.Advice;
import stokewell.fit.Burn;
import stokewell.fit.Cause;
import stokewell.fit.Change;
import stokewell.fit.Disturbance;
import stokewell.fit.Estimate;
import stokewell.fit.Figure;
import stokewell.fit.Fit;
import stokewell.fit.Knob;
import stokewell.fit.Learnt;
import stokewell.fit.Placing;
import stokewell.fit.Profile;
import stokewell.fit.Spot;
import stokewell.fit.Unknown;
import stokewell.fit.Watch;
import stokewell.rig.Rigs;

/** Fits whose every number is chosen, to see how they are told. */
final class FakeFits {

    static final double KWH = 3.6e6;
    static final LocalDateTime START = LocalDateTime.of(2024, 1, 15, 7, 0);
    private static final int ROWS = 40;

    private FakeFits() {}

    static Placing placing() {
        return new Placing(
                List.of("Raum & Bank", "tank"),
                List.of(Spot.ROOM, Spot.STORE_TOP),
                List.of("by its name", "as you said"));
    }

    static Learnt learnt() {
        return new Learnt(
                new Learnt.StoreLoss(343.15, 288.15, new Figure(410, 40), new Figure(0.62, 0.05)),
                new Learnt.Foam("base", 0.05, new Figure(190, 25), new Figure(0, 0), new Figure(2.1, 0.4)),
                new Learnt.LoopFlow(0.15, new Figure(0.05, 0.006)),
                new Learnt.StoreGave(new Figure(90 * KWH, 4 * KWH), new Figure(0.52, 0.06), new Figure(0.11, 0.02)),
                List.of(
                        new Learnt.Cost("open doors", new Figure(120 * KWH, 6 * KWH), new Figure(0.48, 0.02)),
                        new Learnt.Cost("walls", new Figure(100 * KWH, 8 * KWH), new Figure(0.4, 0.03)),
                        new Learnt.Cost("floor", new Figure(30 * KWH, 5 * KWH), new Figure(0.12, 0.02))),
                8);
    }

    static Watch.Suspect suspect(Cause cause, double size, double half, double share) {
        return new Watch.Suspect(Change.lasting(cause, 4.9 * 86400, size), half, 80 * share, share);
    }

    static Fit quiet() {
        return fit(learnt(), null);
    }

    static Fit changed(Watch.Suspect... suspects) {
        return fit(learnt(), new Watch.Deviation(4.9 * 86400, 3.9 * 86400, 4.9 * 86400, false, List.of(suspects)));
    }

    static Fit fit(Learnt learnt, Watch.Deviation deviation) {
        List<Unknown> unknowns = List.of(
                new Unknown("jacket", "heat lost", 0, 0.5, -2, 2, 0.2),
                new Unknown("base", "heat lost below", 0, 0.7, -2, 2, 0.2));
        double[] rows = new double[ROWS];
        boolean[] none = new boolean[ROWS];
        Estimate e = new Estimate(
                unknowns,
                new double[] {0.3, 0.4},
                new Array2DRowRealMatrix(new double[][] {{0.02, -0.018}, {-0.018, 0.02}}),
                List.of(Disturbance.white(0.2)),
                rows,
                none,
                new double[][] {rows, rows},
                new double[][] {rows, rows},
                30,
                3,
                60,
                true);
        List<Watch.Night> nights = new ArrayList<>();
        for (int d = 0; d < 8; d++) {
            nights.add(new Watch.Night(Spot.ROOM, d * 86400.0, 0.4 * d));
            nights.add(new Watch.Night(Spot.STORE_TOP, d * 86400.0, -0.7 * d));
        }
        return new Fit(
                Rigs.pumped(),
                Rigs.pumped(),
                START,
                0,
                8 * 86400,
                e,
                List.of(
                        new Fit.Factor(Knob.JACKET, 1.35, 1.1, 1.7, 0.9),
                        new Fit.Factor(Knob.BASE, 1.5, 1.1, 2.1, 0.5),
                        new Fit.Factor(Knob.PUMP, 0.33, 0.29, 0.37, 0.95),
                        new Fit.Factor(Knob.WOOD, 0.9, 0.82, 0.97, 0.8)),
                List.of(trace(Spot.ROOM, 290), trace(Spot.STORE_TOP, 340)),
                List.of(new Fit.Holdout(Spot.ROOM, 24, 0.5, 1.2)),
                List.of(new Burn(3600, 6, true), new Burn(86400, 5, false)),
                learnt,
                List.of(new Fit.Confused(unknowns.get(0), unknowns.get(1), -0.9)),
                new Watch(nights, deviation == null ? 9 : 80, deviation),
                List.of(
                        new Profile(
                                Knob.JACKET,
                                new double[] {0.8, 1, 1.35, 1.7, 2.2},
                                new double[] {9, 3, 0, 3, 9},
                                new double[] {8, 2.9, 0, 2.9, 8},
                                1.02,
                                1.66),
                        new Profile(
                                Knob.BASE,
                                new double[] {0.3, 0.6, 1.5, 2.5, 5},
                                new double[] {1, 0.4, 0, 0.5, 1.5},
                                new double[] {0.2, 0.1, 0, 0.1, 0.2},
                                0,
                                Double.POSITIVE_INFINITY)),
                List.of(new Advice(Knob.BASE, Spot.SLAB, 0.8, 0.3), new Advice(Knob.BASE, null, 0.8, 0.6)));
    }

    private static Fit.Trace trace(Spot spot, double kelvin) {
        double[] time = new double[ROWS];
        double[] read = new double[ROWS];
        double[] line = new double[ROWS];
        double[] band = new double[ROWS];
        for (int i = 0; i < ROWS; i++) {
            time[i] = 30000 + 7200 * i;
            line[i] = kelvin + 3 * Math.sin(i);
            read[i] = line[i] + 0.2 * Math.cos(3 * i);
            band[i] = 0.6;
        }
        return new Fit.Trace(
                spot, time, read, line, band, new boolean[ROWS], 0.2, 0.95, 0.1, new Disturbance(0.1, 0.2, 7200));
    }
}
