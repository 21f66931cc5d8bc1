package stokewell.solve;

/**
 * Integrates {@link Equations} from state to state: stiff, index-1 differential-algebraic, switched.
 *
 * <p>A Rosenbrock method needs no iteration: one Jacobian and one factorisation a step, so a step either meets its error
 * or is redone shorter; there is no Newton process to fail. It restarts at a switch for nothing, which a multistep
 * method does not. Step lengths follow the predictive controller of Gustafsson, ACM TOMS 20 (1994) 496: the error's trend
 * is carried on, so that steps lengthen in time while a transient dies away. The code RODAS (Hairer and Wanner 1996,
 * IV.7-10) takes the shorter of that and the plain one.
 *
 * <p>Switches: a switching function that goes from negative to zero or more ends the step there, within
 * {@value Crossing#NEAR} of zero and never below it. The caller then changes what the switch changes, makes that function
 * negative (a function still at zero or above is reported again at once; one left at exactly zero is not lost), calls {@link #restart} and goes on.
 *
 * <p>Not thread-safe; nothing is allocated after construction but a {@link StepFailure} and {@link #counters}.
 */
public final class Integrator {

    private static final double SAFETY = 0.85;
    private static final double SHRINK = 5;
    /** A step is redone only above this weighted error: the aim is half of it, and a step a little over is cheaper kept. */
    private static final double GOOD = 1.5;
    /** How much longer than by the last error alone a step may be where errors are falling. */
    private static final double FALLING = 1 / 0.7;

    private final Stepping stepping;
    private final Step step;
    private final Crossing crossing;
    private final AlgebraicStart algebraic;
    private final int order;

    private boolean begun;
    private boolean fresh = true;
    private double firstLongest = Double.POSITIVE_INFINITY;
    /** Length the controller would take next, s. */
    private double planned;

    private double lastLength;
    private double lastError;
    private long steps;
    private long rejected;
    private long events;

    /** RODAS4 with {@link Stepping#standard}. */
    public Integrator(Equations equations, Tolerances tolerances) {
        this(equations, tolerances, Rosenbrock.RODAS4, Stepping.standard());
    }

    public Integrator(Equations equations, Tolerances tolerances, Rosenbrock method, Stepping stepping) {
        this.stepping = stepping;
        step = new Step(equations, tolerances, method);
        crossing = new Crossing(equations);
        algebraic = new AlgebraicStart(equations);
        order = method.order();
    }

    /**
     * Goes on to tStop, or to the first switch before it.
     *
     * @param state changed to where the integration stopped; on a failure, where the last good step ended
     * @param tStop met exactly, s; finite
     * @param sink  told of every step
     * @return the switch that ended it, -1 at tStop
     * @throws StepFailure if no step can be taken
     */
    public int advance(State state, double tStop, Sink sink) {
        int standing = crossing.standing(state);
        if (standing >= 0) return standing;
        while (state.t < tStop) {
            int which = forward(state, tStop, sink);
            if (which >= 0) return which;
        }
        return -1;
    }

    /**
     * To be called after y or the equations have jumped: solves the algebraic equations for the algebraic unknowns, the
     * others held, and forgets what the controller knows of the past.
     */
    public void restart(State state) {
        algebraic.solve(state);
        fresh = true;
    }

    /**
     * To be called after the equations have jumped where the algebraic unknowns did not, or the caller has already given
     * them their new values: only forgets what the controller knows of the past.
     *
     * @param longest first step to try, s: what begins slowly and then bends, the start alone does not tell
     */
    public void forget(double longest) {
        fresh = true;
        firstLongest = longest;
    }

    /** To be called after a failure was mended: the next step is found from the equations alone. */
    public void anew() {
        fresh = true;
        begun = false;
    }

    /** What it has cost so far. */
    public Counters counters() {
        return step.count(steps, rejected, events, algebraic);
    }

    /** One accepted step. */
    private int forward(State state, double tStop, Sink sink) {
        step.from(state);
        double t = state.t;
        double left = tStop - t;
        if (fresh) {
            planned = Math.min(firstLongest, firstStep(left));
            firstLongest = Double.POSITIVE_INFINITY;
        }
        boolean first = fresh;
        boolean repeated = false;
        double wish = Math.min(planned, stepping.longest());
        while (true) {
            double h = fit(wish, left);
            double error = step.attempt(h, h == left ? tStop : t + h);
            // good steps too may shrink for ever, where an unknown that must balance at once hops about its balance
            // so it is with a length that is no number: slopes that overflow have no curvature to begin from
            if (!(h > 16 * Math.ulp(t) || h >= left)) throw failure(t, h, error);
            if (!(error <= GOOD)) {
                wish = shorter(h, error, first);
                rejected++;
                repeated = true;
                continue;
            }
            double plan = plan(h, error, h < wish, repeated);
            double x = crossing.search(step);
            if (x < 1 && stepping.cut() == Stepping.Cut.REPEAT && x * h > 16 * Math.ulp(t)) {
                double cut = x * h;
                error = step.attempt(cut, t + cut);
                if (!(error <= GOOD)) {
                    wish = shorter(cut, error, first);
                    rejected++;
                    repeated = true;
                    continue;
                }
                x = crossing.search(step);
                if (!(x <= 1)) x = crossing.beyond(step, Math.min(1.2, left / cut));
            }
            planned = plan;
            return accept(state, x, sink);
        }
    }

    private int accept(State state, double x, Sink sink) {
        boolean event = x > 0;
        step.finish(event ? x : 1, state);
        steps++;
        begun = true;
        fresh = event;
        sink.accept(step);
        if (!event) {
            crossing.shift();
            return -1;
        }
        events++;
        return crossing.which();
    }

    /** The wished length, stretched a little or halved so that the stop is met without a stub. */
    private static double fit(double wish, double left) {
        if (wish * 1.01 >= left) return left;
        return Math.min(wish, 0.5 * left);
    }

    private double firstStep(double left) {
        if (begun && stepping.restart() == Stepping.Restart.REMEMBERED) return planned;
        double h = Math.min(step.curvatureStep(), left);
        return begun && stepping.restart() == Stepping.Restart.SHORTER ? Math.min(h, planned) : h;
    }

    private double shorter(double h, double error, boolean first) {
        if (!(error < Double.POSITIVE_INFINITY)) return 0.1 * h;
        return h / Math.min(first ? 10 : SHRINK, Math.max(1.1, root(error) / SAFETY));
    }

    /** What to try next after a good step. */
    private double plan(double h, double error, boolean stub, boolean repeated) {
        double divide = Math.max(1 / stepping.growth(), Math.min(SHRINK, root(error) / SAFETY));
        if (stub && divide * stepping.growth() <= 1) return Math.max(planned, h / divide);
        if (!fresh) {
            double predicted = lastLength / h * root(error * error / lastError) / SAFETY;
            divide = Math.max(1 / stepping.growth(), Math.min(SHRINK, Math.max(predicted, divide / FALLING)));
        }
        lastLength = h;
        lastError = Math.max(0.01, error);
        return repeated ? Math.min(h, h / divide) : h / divide;
    }

    /** error^(1/order). */
    private double root(double error) {
        return switch (order) {
            case 3 -> Math.cbrt(error);
            case 4 -> Math.sqrt(Math.sqrt(error));
            default -> Math.pow(error, 1.0 / order);
        };
    }

    private StepFailure failure(double t, double h, double error) {
        StepFailure.Reason reason = step.singular()
                ? StepFailure.Reason.SINGULAR
                : error < Double.POSITIVE_INFINITY ? StepFailure.Reason.STEP_TOO_SHORT : StepFailure.Reason.NOT_FINITE;
        return new StepFailure(t, h, step.worst(), reason);
    }
}
