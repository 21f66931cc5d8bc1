package stokewell.solve;

/** Prints what a factorisation, a solve, a step and a restart rule cost. Run by hand. */
final class Timing {

    private Timing() {}

    public static void main(String[] arguments) {
        for (int n : new int[] {60, 120}) lu(n);
        for (Rosenbrock method : Rosenbrock.ALL) {
            for (double tolerance : new double[] {1e-2, 1e-3}) day(method, tolerance, Stepping.standard());
        }
        for (Stepping.Restart restart : Stepping.Restart.values()) {
            for (Stepping.Cut cut : Stepping.Cut.values()) {
                for (double tolerance : new double[] {1e-2, 1e-3}) {
                    day(
                            Rosenbrock.RODAS4,
                            tolerance,
                            Stepping.standard().withRestart(restart).withCut(cut));
                }
            }
        }
    }

    private static void lu(int n) {
        Network network = new Network(n, n / 10, 1);
        State state = network.start(290);
        double[] jacobian = new double[network.pattern().size()];
        network.linearize(0, state.y, jacobian, new double[n], new double[n], new double[2]);
        double[] shift = new double[n];
        for (int i = 0; i < n; i++) shift[i] = network.algebraic(i) ? 0 : 0.1;
        SparseLu lu = new SparseLu(network.pattern());
        double[] b = new double[n];
        double factor = 0;
        double solve = 0;
        int turns = 100_000;
        for (int round = 0; round < 8; round++) {
            long start = System.nanoTime();
            for (int i = 0; i < turns; i++) lu.factorShifted(shift, jacobian);
            long middle = System.nanoTime();
            for (int i = 0; i < turns; i++) {
                for (int j = 0; j < n; j++) b[j] = j;
                lu.solve(b);
            }
            factor = (middle - start) / 1e3 / turns;
            solve = (System.nanoTime() - middle) / 1e3 / turns;
        }
        System.out.printf(
                "n %d, %d entries, %d in L+U, %d updates: factor %.2f us, solve %.2f us%n",
                n, jacobian.length, lu.factorSize(), lu.updates(), factor, solve);
    }

    private static void day(Rosenbrock method, double tolerance, Stepping stepping) {
        double best = Double.POSITIVE_INFINITY;
        Counters counters = null;
        for (int round = 0; round < 6; round++) {
            Network network = new Network(60, 6, 1);
            Integrator integrator = new Integrator(network, Tolerances.absolute(tolerance), method, stepping);
            State state = network.start(290);
            integrator.restart(state);
            long start = System.nanoTime();
            network.run(integrator, state, 10 * 86400, Sink.NONE);
            best = Math.min(best, (System.nanoTime() - start) / 1e6);
            counters = integrator.counters();
        }
        System.out.printf(
                "%s %g %s %s: %.2f ms, %.2f us a step, %s%n",
                method.name(),
                tolerance,
                stepping.restart(),
                stepping.cut(),
                best,
                1e3 * best / counters.steps(),
                counters);
    }
}
