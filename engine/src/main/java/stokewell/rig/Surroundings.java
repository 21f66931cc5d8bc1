package stokewell.rig;

import static stokewell.rig.Dimension.AREA;
import static stokewell.rig.Dimension.LENGTH;
import static stokewell.rig.Dimension.PRESSURE;
import static stokewell.rig.Dimension.TIME;
import static stokewell.rig.Dimension.VOLUME_FLOW;

/** What stands round the stove. */
public record Surroundings(
        @Entry(orElse = Entry.ABSENT, says = "Are fuel, solvent, spray or other flammable vapours ever in this room?")
        Boolean flammables,

        @Entry(orElse = Entry.ABSENT, says = "Is it a garage, or open to one?")
        Boolean garage,

        @Entry(orElse = Entry.ABSENT, says = "Is there a carbon monoxide alarm in this room?")
        Boolean monoxideAlarm,

        @Entry(is = LENGTH, low = 0, high = 20, orElse = Entry.ABSENT, says = "From stove to anything that can burn.")
        double clearance,

        @Entry(orElse = Entry.ABSENT, says = "Is that wall shielded, with air behind the shield?")
        Boolean shielded,

        @Entry(
                is = LENGTH,
                low = 0,
                high = 20,
                orElse = Entry.ABSENT,
                says = "From bare connector to anything that can burn.")
        double connectorClearance,

        @Entry(is = PRESSURE, low = 100, high = 1e6, orElse = Entry.ABSENT, says = "Load the floor is good for.")
        double floorGoodFor,

        @Entry(
                is = VOLUME_FLOW,
                low = 0,
                high = 10,
                orElse = Entry.ABSENT,
                says = "Air that fans or a dust collector throw outdoors.")
        double exhaust,

        @Entry(is = AREA, low = 0, high = 5, orElse = Entry.ABSENT, says = "Opening that always lets outdoor air in.")
        double airOpening,

        @Entry(
                is = TIME,
                low = 0,
                high = 120 * 86400.0,
                orElse = Entry.ABSENT,
                says = "Longest the fire burns unwatched.")
        double unwatched,

        @Entry(
                is = TIME,
                low = 0,
                high = 1200 * 86400.0,
                orElse = Entry.ABSENT,
                says = "Longest the rig stands cold with water in it in frost: nights, or weeks away.")
        double coldAndFull,

        @Entry(orElse = Entry.ABSENT, says = "Does a loud alarm of its own watch the coil's outlet?")
        Boolean hotAlarm,

        @Entry(orElse = Entry.ABSENT, says = "Is the pump on a hand switch with no thermostat to start it?")
        Boolean handSwitch,

        @Entry(orElse = Entry.ABSENT, says = "Is a low water level noticed: a probe, a float or a gauge read weekly?")
        Boolean levelWatched,

        @Entry(orElse = Entry.ABSENT, says = "Is the pump's and fan's supply on a residual-current breaker?")
        Boolean breaker,

        @Entry(
                orElse = Entry.ABSENT,
                says = "Do cables and plugs keep clear of hot pipe and stove, and out from under water that may drip?")
        Boolean cablesClear,

        @Entry(orElse = Entry.ABSENT, says = "Are pump, pipes and stove bonded to one earth?")
        Boolean bonded,

        @Entry(orElse = Entry.ABSENT, says = "Is there a place outdoors, with a lidded metal pail, for coals and ash?")
        Boolean coalsOut) {

    public Surroundings {
        Entries.check(
                Surroundings.class,
                "safety.surroundings",
                flammables,
                garage,
                monoxideAlarm,
                clearance,
                shielded,
                connectorClearance,
                floorGoodFor,
                exhaust,
                airOpening,
                unwatched,
                coldAndFull,
                hotAlarm,
                handSwitch,
                levelWatched,
                breaker,
                cablesClear,
                bonded,
                coalsOut);
    }
}
