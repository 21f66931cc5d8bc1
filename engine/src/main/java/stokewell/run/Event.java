package stokewell.run;

/** What happened in a run, and when. Times in seconds from the start of the weather it ran in. */
public sealed interface Event {

    double time();

    /** A load went on the fire: mass as fired, kg. */
    record Loaded(double time, double mass) implements Event {}

    /** A load was left out because the store was hot enough; its top, K. */
    record Skipped(double time, double storeTop) implements Event {}

    /** A pump or fan started or stopped. */
    record Switched(double time, String what, boolean on) implements Event {}

    /** The air was set to a share of wide open. */
    record AirSet(double time, double open) implements Event {}

    /** Water began to boil somewhere. */
    record BoilingBegan(double time, String where) implements Event {}
}
