package stokewell.check;

/** What can fail. The order is that of the page that shows them. */
public enum Fault {
    POWER_OUT("power out", "pump and fans stop; no more wood is put on"),
    PUMP_DEAD("pump dead", "the pump stops, lights stay on, and the loading goes on"),
    AIR_LOCK("air lock", "air stands in the loop: nothing moves, pump or no pump"),
    VALVE_SHUT("valve shut", "a valve in the loop is shut"),
    CHECK_STUCK("check valve stuck shut", "rust holds the check valve shut, and the power goes out"),
    FAN_DEAD("fan dead", "the store's heat no longer leaves by its fan"),
    SENSOR_OUT("sensor out of its well", "the pump's sensor reads the room's air"),
    STUCK_ON("thermostat stuck on", "the pump never stops"),
    STUCK_OFF("thermostat stuck off", "the pump never starts by its thermostat"),
    STORE_FULL("store full", "the store is hot to its bottom when the fire is lit for more"),
    OVER_FIRE("over-fire", "the air is left wide open"),
    DOUBLE_LOAD("double load", "twice the wood goes on"),
    LOW_WATER("low water", "so much water is gone that nothing circulates, and none is left to fill the coil"),
    DRY_REFILLED("dry coil refilled", "water is let into a coil that has boiled dry"),
    FROZEN_RUN("frozen run", "the rig stands cold and full, then a fire is lit"),
    LEAK("leak", "a seam runs at 6 L/h and nobody looks"),
    VENT_NARROW("vent partly blocked", "scale, a nest or ice leaves a third of the vent's bore, and the pump stops"),
    VENT_BLOCKED("vent blocked", "the open vent is plugged and the pump stops"),
    RELIEF_FAILS("relief missing or too small", "the pump stops, the air is wide open, and steam must leave"),
    RELIEF_WEEPS(
            "relief valve weeping", "the valve has dripped until the loop has no pressure left, and the pump stops"),
    FOULED("coil fouled", "3 mm (1/8 in) of soot on it, 2 mm (1/16 in) of lime in it"),
    REVERSE_FLOW("reverse flow", "nothing stops the loop from running backwards through the night"),
    CHIMNEY_FIRE("chimney fire", "the tar in the chimney burns for a quarter of an hour"),
    CAP_BLOCKED("chimney cap iced", "ice or a nest leaves a quarter of the chimney's cap"),
    BACKDRAFT("backdraft", "a mild, still day, a cold chimney, and coals");

    private final String title;
    private final String story;

    Fault(String title, String story) {
        this.title = title;
        this.story = story;
    }

    /** What a person calls it. */
    public String title() {
        return title;
    }

    /** What it is, in half a sentence. */
    public String story() {
        return story;
    }
}
