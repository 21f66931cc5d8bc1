package stokewell.run;

/** What happened in a run, and when. Times in seconds from the start of the weather it ran in. */
public sealed interface Event {

    double time();

    /** A load went on the fire: mass as fired, kg. */
    record Loaded(double time, double mass) implements Event {}

    /** A load was left out because the store was hot enough; its top, K. */
    record Skipped(double time, double storeTop) implements Event {}

    /** A load was left out because the room was warm enough; its air, K. */
    record RoomWarm(double time, double room) implements Event {}

    /** A dead bed too wet to be lit again was raked out; its mass with its water, kg. */
    record RakedOut(double time, double mass) implements Event {}

    /** Somebody filled up the header; water, kg. */
    record ToppedUp(double time, double mass) implements Event {}

    /** A pump or fan started or stopped. */
    record Switched(double time, String what, boolean on) implements Event {}

    /** The air was set to a share of wide open. */
    record AirSet(double time, double open) implements Event {}

    /** Water began to boil somewhere. */
    record BoilingBegan(double time, String where) implements Event {}
}
