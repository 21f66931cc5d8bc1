package stokewell.network;

import static stokewell.balance.Wiring.METERS;
import static stokewell.balance.Wiring.OUTSIDE;

import java.util.Arrays;
import java.util.List;
import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.solve.Equations;
import stokewell.solve.Pattern;

/**
 * The equations of a wired rig. Not thread-safe: one instance a run, its work space is reused and no call allocates.
 *
 * <p>Sums are the accounts in order, then the meters. The slopes of all parts are gathered in slots, then laid along the
 * patterns and divided by the capacity of their row in one pass.
 */
public final class Network implements Equations {

    /** Where the outside comes from: writes the signals, or their slopes in time, in the order of the wiring. */
    public interface Signals {
        void at(double t, double[] out);

        void slopeAt(double t, double[] out);
    }

    /** Decides what is an event; set by the run. Sees states, not signals: those in x are of some other moment. */
    public interface Switching {
        int count();

        void values(double t, double[] x, double[] out);
    }

    private final Wiring wiring;
    private final Part[] parts;
    private final int n;
    private final int accounts;
    private final int meters;
    private final boolean[] algebraic;
    private final double[] scale;
    private final double[] perCapacity;
    private Signals signals;
    private final int signalCount;

    private final double[] x;
    private final double[] p;
    private final double[] v;
    private final double[] steady;
    private final Part[] changing;
    private final double[] outside;

    private final Pattern pattern;
    private final Pattern sumPattern;
    private final int[] slotOfPlace;
    private final double[] factorOfPlace;
    private final int[] slotOfSumPlace;
    private final int[] driveRow;
    private final int[] driveSlot;
    private final int[] driveSignal;
    private final double[] driveFactor;

    private Switching switching = new Switching() {
        @Override
        public int count() {
            return 0;
        }

        @Override
        public void values(double t, double[] x, double[] out) {}
    };

    public Network(Wiring wiring, Signals signals) {
        this.wiring = wiring;
        this.signals = signals;
        parts = wiring.parts().toArray(Part[]::new);
        List<Wiring.State> states = wiring.states();
        n = states.size();
        accounts = wiring.accounts().size();
        meters = wiring.meters().size();
        signalCount = wiring.signals().size();
        algebraic = new boolean[n];
        scale = new double[n];
        perCapacity = new double[n];
        for (int i = 0; i < n; i++) {
            Wiring.State s = states.get(i);
            algebraic[i] = s.kind() == Wiring.Kind.ALGEBRAIC;
            scale[i] = s.scale();
            perCapacity[i] = 1 / s.capacity();
        }
        x = new double[OUTSIDE + n];
        p = new double[OUTSIDE + n];
        outside = new double[OUTSIDE];

        boolean[][] filled = new boolean[n][n];
        for (int i = 0; i < n; i++) filled[i][i] = true;
        boolean[][] sumFilled = new boolean[accounts + meters][n];
        List<long[]> places = wiring.slotPlaces();
        v = new double[places.size() + 1];
        steady = new double[places.size() + 1];
        for (Part part : parts) if (part.steadySlopes()) part.slopes(x, steady);
        changing = java.util.Arrays.stream(parts)
                .filter(part -> !part.steadySlopes())
                .toArray(Part[]::new);
        int drives = 0;
        for (long[] place : places) {
            int row = (int) place[0];
            int col = (int) place[1];
            if (col < OUTSIDE) drives++;
            else if (row >= OUTSIDE) filled[row - OUTSIDE][col - OUTSIDE] = true;
            else sumFilled[sumOfRow(row)][col - OUTSIDE] = true;
        }
        pattern = patternOf(filled, n);
        sumPattern = patternOf(sumFilled, n);
        slotOfPlace = new int[pattern.size()];
        factorOfPlace = new double[pattern.size()];
        slotOfSumPlace = new int[sumPattern.size()];
        driveRow = new int[drives];
        driveSlot = new int[drives];
        driveSignal = new int[drives];
        driveFactor = new double[drives];
        Arrays.fill(slotOfPlace, places.size());
        int d = 0;
        for (int s = 0; s < places.size(); s++) {
            int row = (int) places.get(s)[0];
            int col = (int) places.get(s)[1];
            if (col < OUTSIDE) {
                driveRow[d] = row;
                driveSlot[d] = s;
                driveSignal[d] = col;
                driveFactor[d] = row >= OUTSIDE ? perCapacity[row - OUTSIDE] : 1;
                d++;
            } else if (row >= OUTSIDE) {
                int place = pattern.place(row - OUTSIDE, col - OUTSIDE);
                slotOfPlace[place] = s;
                factorOfPlace[place] = perCapacity[row - OUTSIDE];
            } else {
                slotOfSumPlace[sumPattern.place(sumOfRow(row), col - OUTSIDE)] = s;
            }
        }
    }

    /** Takes the outside from elsewhere from now on. What has run on this network so far must not run on. */
    void under(Signals other) {
        signals = other;
    }

    private int sumOfRow(int row) {
        return row < METERS ? row : accounts + row - METERS;
    }

    private static Pattern patternOf(boolean[][] filled, int columns) {
        int[] start = new int[filled.length + 1];
        int size = 0;
        for (boolean[] row : filled) for (boolean f : row) if (f) size++;
        int[] column = new int[size];
        int at = 0;
        for (int i = 0; i < filled.length; i++) {
            for (int j = 0; j < columns; j++) if (filled[i][j]) column[at++] = j;
            start[i + 1] = at;
        }
        return new Pattern(filled.length, columns, start, column);
    }

    /** What this network was made from. */
    public Wiring wiring() {
        return wiring;
    }

    /** The parts that make its flows. */
    public List<Part> parts() {
        return List.of(parts);
    }

    /** Sets what is an event from here on. */
    public void watch(Switching switching) {
        this.switching = switching;
    }

    /** States to begin with, as the wiring gives them. */
    public double[] start() {
        return wiring.states().stream().mapToDouble(Wiring.State::start).toArray();
    }

    /** Heat capacity of state i, J/K; 0 where it is no heat node. */
    public double capacity(int i) {
        Wiring.State s = wiring.states().get(i);
        return s.kind() == Wiring.Kind.HEAT ? s.capacity() : 0;
    }

    /** The column of the state or signal by handle, at time t and state y: what a part or a sensor would read. */
    public double[] columns(double t, double[] y) {
        load(t, y);
        return x;
    }

    @Override
    public int size() {
        return n;
    }

    @Override
    public boolean algebraic(int i) {
        return algebraic[i];
    }

    @Override
    public int sums() {
        return accounts + meters;
    }

    @Override
    public Pattern pattern() {
        return pattern;
    }

    @Override
    public Pattern sumPattern() {
        return sumPattern;
    }

    private void load(double t, double[] y) {
        signals.at(t, outside);
        System.arraycopy(outside, 0, x, 0, signalCount);
        System.arraycopy(y, 0, x, OUTSIDE, n);
    }

    @Override
    public void rates(double t, double[] y, double[] f, double[] g) {
        load(t, y);
        Arrays.fill(p, 0);
        for (Part part : parts) part.flows(x, p);
        for (int i = 0; i < n; i++) f[i] = p[OUTSIDE + i] * perCapacity[i];
        System.arraycopy(p, 0, g, 0, accounts);
        System.arraycopy(p, METERS, g, accounts, meters);
    }

    @Override
    public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
        load(t, y);
        System.arraycopy(steady, 0, v, 0, v.length);
        for (Part part : changing) part.slopes(x, v);
        for (int k = 0; k < slotOfPlace.length; k++) dfdy[k] = v[slotOfPlace[k]] * factorOfPlace[k];
        for (int k = 0; k < slotOfSumPlace.length; k++) dgdy[k] = v[slotOfSumPlace[k]];
        signals.slopeAt(t, outside);
        Arrays.fill(dfdt, 0);
        Arrays.fill(dgdt, 0);
        for (int k = 0; k < driveSlot.length; k++) {
            double slope = v[driveSlot[k]] * driveFactor[k] * outside[driveSignal[k]];
            int row = driveRow[k];
            if (row >= OUTSIDE) dfdt[row - OUTSIDE] += slope;
            else dgdt[sumOfRow(row)] += slope;
        }
    }

    @Override
    public double scale(int i) {
        return scale[i];
    }

    @Override
    public int switches() {
        return switching.count();
    }

    @Override
    public void switching(double t, double[] y, double[] values) {
        if (switching.count() == 0) return;
        // switches look at states only, so the signals need not be asked
        System.arraycopy(y, 0, x, OUTSIDE, n);
        switching.values(t, x, values);
    }
}
