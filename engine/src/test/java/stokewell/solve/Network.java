package stokewell.solve;

import java.util.Arrays;
import java.util.Random;

/**
 * A made-up heat network for tests: a chain of nodes with some cross links, radiation-like links, losses to a swinging
 * outdoor air, some nodes without heat capacity, a heater on node 0 under a thermostat on the last node. Ledger: heat
 * from the heater, heat lost, so that stored heat = heater - lost whatever happens.
 */
final class Network implements Equations {

    final int n;
    final double[] capacity;
    boolean heating;
    double power = 3000;
    double low = 294;
    double high = 296;
    private final int links;
    private final int[] from;
    private final int[] to;
    private final double[] conductance;
    private final double[] radiance;
    private final double[] loss;
    private final Pattern pattern;
    private final Pattern sumPattern;
    private final int[] places;
    private final int[] diagonal;

    Network(int n, int massless, long seed) {
        this.n = n;
        Random random = new Random(seed);
        capacity = new double[n];
        loss = new double[n];
        for (int i = 0; i < n; i++) {
            capacity[i] = Math.exp(Math.log(500) + random.nextDouble() * Math.log(2e3));
            loss[i] = random.nextInt(4) == 0 ? 2 * random.nextDouble() : 0;
        }
        for (int k = 0; k < massless; k++) capacity[1 + random.nextInt(n - 2)] = 0;
        int cross = n / 3;
        links = n - 1 + cross;
        from = new int[links];
        to = new int[links];
        conductance = new double[links];
        radiance = new double[links];
        boolean[] joined = new boolean[n * n];
        for (int k = 0; k < links; k++) {
            from[k] = k < n - 1 ? k : random.nextInt(n);
            to[k] = k < n - 1 ? k + 1 : Math.floorMod(from[k] + 2 + random.nextInt(8), n);
            conductance[k] = Math.exp(random.nextDouble() * Math.log(500));
            radiance[k] = k % 3 == 0 ? 5.67e-8 * 0.3 * random.nextDouble() : 0;
            joined[from[k] * n + to[k]] = true;
            joined[to[k] * n + from[k]] = true;
        }
        pattern = Problem.where(n, p -> joined[p]);
        sumPattern = new Pattern(
                2,
                n,
                new int[] {0, 0, n},
                java.util.stream.IntStream.range(0, n).toArray());
        places = new int[4 * links];
        for (int k = 0; k < links; k++) {
            places[4 * k] = pattern.place(from[k], from[k]);
            places[4 * k + 1] = pattern.place(from[k], to[k]);
            places[4 * k + 2] = pattern.place(to[k], from[k]);
            places[4 * k + 3] = pattern.place(to[k], to[k]);
        }
        diagonal = new int[n];
        for (int i = 0; i < n; i++) diagonal[i] = pattern.place(i, i);
    }

    State start(double temperature) {
        State state = State.of(this, 0);
        Arrays.fill(state.y, temperature);
        return state;
    }

    double stored(double[] y) {
        double sum = 0;
        for (int i = 0; i < n; i++) sum += capacity[i] * y[i];
        return sum;
    }

    private static double outdoors(double t) {
        return 270 + 6 * Math.sin(2 * Math.PI * t / 86400);
    }

    @Override
    public int size() {
        return n;
    }

    @Override
    public boolean algebraic(int i) {
        return capacity[i] == 0;
    }

    @Override
    public int sums() {
        return 2;
    }

    @Override
    public Pattern pattern() {
        return pattern;
    }

    @Override
    public Pattern sumPattern() {
        return sumPattern;
    }

    @Override
    public void rates(double t, double[] y, double[] f, double[] g) {
        double air = outdoors(t);
        double lost = 0;
        for (int i = 0; i < n; i++) {
            double out = loss[i] * (y[i] - air);
            lost += out;
            f[i] = -out;
        }
        f[0] += heating ? power : 0;
        g[0] = heating ? power : 0;
        g[1] = lost;
        for (int k = 0; k < links; k++) {
            double a = y[from[k]];
            double b = y[to[k]];
            double heat = conductance[k] * (a - b) + radiance[k] * (a * a * a * a - b * b * b * b);
            f[from[k]] -= heat;
            f[to[k]] += heat;
        }
        for (int i = 0; i < n; i++) if (capacity[i] != 0) f[i] /= capacity[i];
    }

    @Override
    public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
        Arrays.fill(dfdy, 0);
        double warming = 6 * 2 * Math.PI / 86400 * Math.cos(2 * Math.PI * t / 86400);
        dgdt[0] = 0;
        dgdt[1] = 0;
        for (int i = 0; i < n; i++) {
            dfdy[diagonal[i]] -= loss[i];
            dgdy[i] = loss[i];
            dfdt[i] = loss[i] * warming / (capacity[i] == 0 ? 1 : capacity[i]);
            dgdt[1] -= loss[i] * warming;
        }
        for (int k = 0; k < links; k++) {
            double a = y[from[k]];
            double b = y[to[k]];
            double da = conductance[k] + 4 * radiance[k] * a * a * a;
            double db = conductance[k] + 4 * radiance[k] * b * b * b;
            dfdy[places[4 * k]] -= da;
            dfdy[places[4 * k + 1]] += db;
            dfdy[places[4 * k + 2]] += da;
            dfdy[places[4 * k + 3]] -= db;
        }
        for (int i = 0; i < n; i++) {
            if (capacity[i] == 0) continue;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) dfdy[p] /= capacity[i];
        }
    }

    @Override
    public double scale(int i) {
        return 1;
    }

    @Override
    public int switches() {
        return 2;
    }

    @Override
    public void switching(double t, double[] y, double[] values) {
        values[0] = heating ? -1 : low - y[n - 1];
        values[1] = heating ? y[n - 1] - high : -1;
    }

    /** Runs to a time, the thermostat at work. */
    void run(Integrator integrator, State state, double until, Sink sink) {
        while (integrator.advance(state, until, sink) >= 0) {
            heating = !heating;
            integrator.restart(state);
        }
    }
}
