package stokewell.bench;

import java.nio.file.Path;
import stokewell.run.Other;

/** CVODE or IDA of SUNDIALS on a {@link Problem}; the native part is in bench/cvode. */
final class Sundials implements Other.Solver, AutoCloseable {

    static final int CVODE = 0;
    static final int IDA = 1;

    /** What the native side calls back. Reads y; fills f, values or g. */
    abstract static class Problem {
        double[] y;
        double[] f;
        double[] values;
        double[] g;
        int[] columnStart;
        int[] row;
        int[] diagonal;
        boolean[] differential;
        double[] scale;
        long rateCalls;
        long jacobianCalls;
        long switchCalls;

        /** False where they cannot be found: the solver tries a shorter step. */
        abstract boolean rates(double t);

        abstract boolean jacobian(double t);

        abstract void switching(double t);

        /** Takes the start into y, and for a DAE the slopes into f. */
        abstract void take(double t, double[] all);

        /** Gives all unknowns for y. */
        abstract void give(double t, double[] all);
    }

    /** Times the crossing alone. */
    private static final class Nothing extends Problem {
        Nothing(Problem like) {
            y = like.y.clone();
            f = like.f.clone();
            values = like.values.clone();
            g = like.g.clone();
            columnStart = like.columnStart;
            row = like.row;
            diagonal = like.diagonal;
            differential = like.differential;
            scale = like.scale;
        }

        @Override
        boolean rates(double t) {
            rateCalls++;
            return true;
        }

        @Override
        boolean jacobian(double t) {
            return true;
        }

        @Override
        void switching(double t) {}

        @Override
        void take(double t, double[] all) {}

        @Override
        void give(double t, double[] all) {}
    }

    private final Problem problem;
    private final long handle;
    private final long[] counts = new long[5];

    /** @param convergence share of the error that Newton may leave; 0: as SUNDIALS has it */
    Sundials(
            Problem problem, int kind, double relative, double tolerance, int order, int ordering, double convergence) {
        this.problem = problem;
        double[] absolute = new double[problem.y.length];
        for (int i = 0; i < absolute.length; i++) absolute[i] = Math.min(1e30, tolerance * problem.scale[i]);
        handle = make(
                kind,
                problem,
                problem.y,
                problem.f,
                problem.values,
                problem.g,
                problem.columnStart,
                problem.row,
                problem.diagonal,
                problem.differential,
                relative,
                absolute,
                order,
                ordering,
                convergence);
        if (handle == 0) throw new IllegalStateException("SUNDIALS refused the problem");
    }

    static void load() {
        System.load(Path.of(System.getProperty("bridge", "bench/target/libsundialsbridge.so"))
                .toAbsolutePath()
                .toString());
    }

    /** Seconds that one crossing takes, with the copies of a rates call, or of a Jacobian. */
    static double crossing(Problem like, boolean whole) {
        int times = 200_000;
        double best = Double.POSITIVE_INFINITY;
        try (Sundials s = new Sundials(new Nothing(like), CVODE, 0, 1, 5, 1, 0)) {
            for (int k = 0; k < 12; k++) {
                long begun = Clock.thread();
                cross(s.handle, times, whole);
                best = Math.min(best, (Clock.thread() - begun) * 1e-9 / times);
            }
        }
        return best;
    }

    @Override
    public void restart(double t, double[] all) {
        count(handle, counts);
        problem.take(t, all);
        int flag = restart(handle, t);
        if (flag < 0) throw new IllegalStateException("SUNDIALS: restart at " + t + " s failed, flag " + flag);
    }

    @Override
    public int advance(double until, double stop) {
        int flag = advance(handle, until, stop);
        if (flag < 0) throw new IllegalStateException("SUNDIALS: stopped at " + time() + " s, flag " + flag);
        return flag == 2 ? fired(handle) : -1;
    }

    @Override
    public double time() {
        return time(handle);
    }

    @Override
    public void state(double[] all) {
        problem.give(time(), all);
    }

    /** Steps, error test failures, factorisations, Newton iterations, convergence failures. */
    long[] counts() {
        count(handle, counts);
        return counts;
    }

    @Override
    public void close() {
        drop(handle);
    }

    private static native long make(
            int kind,
            Problem problem,
            double[] y,
            double[] f,
            double[] values,
            double[] g,
            int[] columnStart,
            int[] row,
            int[] diagonal,
            boolean[] differential,
            double relative,
            double[] absolute,
            int order,
            int ordering,
            double convergence);

    private static native int restart(long handle, double t);

    private static native int advance(long handle, double until, double stop);

    private static native double time(long handle);

    private static native int fired(long handle);

    private static native void count(long handle, long[] sums);

    private static native void cross(long handle, int times, boolean whole);

    private static native void drop(long handle);
}
