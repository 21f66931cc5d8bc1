package stokewell.solve;

/** Is told of every accepted step. */
@FunctionalInterface
public interface Sink {

    /** Keeps nothing. */
    Sink NONE = step -> {};

    /** @param step the solution over the step; only good until this method returns */
    void accept(Interpolant step);
}
