package stokewell.check;

import stokewell.rig.Rig;

/** What a person does when a fault has happened. */
final class Advice {

    private Advice() {}

    static String of(Rig rig, Fault fault, boolean boils) {
        return switch (fault) {
            case CHECK_STUCK ->
                (boils
                                ? "Shut the air, leave the door shut, put no wood on, pour no water on the fire. "
                                : "Shut the air and put no wood on. ")
                        + "Once a year try it at a small fire with the power off: the return pipe must grow warm.";
            case POWER_OUT, PUMP_DEAD, SENSOR_OUT, STUCK_OFF ->
                boils
                        ? "Shut the air, leave the door shut, put no wood on, pour no water on the fire; do not start the pump "
                                + "while it is over " + Telling.degrees(HotLimits.restart(rig)) + "."
                        : "Shut the air and put no wood on.";
            case AIR_LOCK ->
                "Shut the air; let it go cold, then bleed the high points."
                        + (rig.loop().pump() == null ? "" : " The pump hums all the while.");
            case VALVE_SHUT ->
                "Shut the air and keep away; open nothing that is hot. Take the handles off every such valve.";
            case FAN_DEAD -> boils ? "Stop feeding." : "Stop feeding before the store is full; mend the fan.";
            case STUCK_ON -> "Nothing is in danger but the heat: a pump that runs with the fire out cools the store.";
            case STORE_FULL ->
                "Put no more wood on while the store is hot to its bottom; fan on, doors open, and give the heat to the room.";
            case OVER_FIRE -> "Shut the air, not the water. Set a timer whenever the air is open to light.";
            case DOUBLE_LOAD -> "Take nothing out; shut the air half and keep the fan on.";
            case LOW_WATER -> "Let the fire die. Fill only when the coil is hand-warm.";
            case DRY_REFILLED ->
                "Never let water into a hot dry coil: take the fire away and wait until it is hand-warm, usually the next day.";
            case FROZEN_RUN ->
                "Never light a fire on a rig that may be frozen: warm the room by other means first, then see that "
                        + (rig.safety().closed() ? "water moves." : "the vent breathes.");
            case LEAK ->
                (rig.safety().closed()
                                ? "Read the gauge every week and write it down"
                                : "Read the level every week in mm and write it down")
                        + "; a tray and a floor alarm. Below the mark light no fire, and "
                        + "fill only when the coil is hand-warm.";
            case VENT_NARROW ->
                "Look through the vent each autumn, cold; a narrow one throws its water before it bursts. Shut the air.";
            case VENT_BLOCKED ->
                "Before every first fire see that the vent breathes; a relief valve at the stove is the second way out.";
            case RELIEF_FAILS ->
                "The valve must be rated for the greatest fire, at the stove, with nothing that shuts.";
            case RELIEF_WEEPS ->
                "Read the gauge every week and write it down. Replace a valve that drips, never cap it: what dries in it plugs it. Find "
                        + "out why it dripped: a vessel too small or flat, or a pressure too near the valve's.";
            case FOULED ->
                "Brush the coil weekly, soft water in it; watch how fast the store charges: slower at the same fire is soot.";
            case REVERSE_FLOW ->
                "A heat trap or a flap in the safe direction. Feel the return pipe in the morning: it should be cold.";
            case CHIMNEY_FIRE ->
                "Shut the air inlets and the door, get everybody out, call the fire service from outside; no water into stove or "
                        + "flue; no fire before it has been inspected.";
            case CAP_BLOCKED ->
                "Look up the flue before the first fire of autumn and in hard frost; light paper first and see that it draws. "
                        + "A carbon monoxide alarm must be there.";
            case BACKDRAFT ->
                "Warm the flue first with paper, open a window, run no fan that blows outdoors; a carbon monoxide alarm must be "
                        + "there.";
        };
    }
}
