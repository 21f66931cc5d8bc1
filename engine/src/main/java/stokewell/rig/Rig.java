package stokewell.rig;

import static stokewell.rig.Entry.ABSENT;

import java.util.List;

/** The whole built thing with its room: fire, loop, store, emitters, controls, building. */
public record Rig(
        @Entry(says = "What you call this rig.") String name,

        @Entry(orElse = "", says = "A line about it, for yourself.")
        String story,

        @Entry(says = "Where it stands.") Place place,

        @Entry(orElse = "{}", says = "The weather it meets: a file of hours, or a plain high and low day.")
        Outdoors weather,

        @Entry(says = "The room it heats.") Room room,
        @Entry(says = "The stove.") Stove stove,

        @Entry(orElse = "{}", says = "The flue: connector and chimney.")
        Flue flue,

        @Entry(orElse = "{}", says = "What is burnt.") Fuel fuel,

        @Entry(says = "When the stove is loaded, and by which rule.")
        Habit habit,

        @Entry(orElse = ABSENT, says = "What takes heat from the fire into water, in the order the water meets it.")
        List<Pickup> pickups,

        @Entry(orElse = ABSENT, says = "The water loop between pickups and store.")
        Loop loop,

        @Entry(orElse = ABSENT, says = "The insulated store of hot water.")
        Store store,

        @Entry(orElse = ABSENT, says = "What gives the store's heat to the room.")
        List<Emitter> emitters,

        @Entry(orElse = ABSENT, says = "The switches that drive pump and fan.")
        List<Switch> switches) {

    public Rig {
        Entries.check(Rig.class, "rig", name, story, place, weather, room, stove, flue, fuel, habit);
        pickups = List.copyOf(pickups);
        emitters = List.copyOf(emitters);
        switches = List.copyOf(switches);
        if (pickups.isEmpty() != (loop == null)) {
            throw new RigFault(
                    "rig",
                    loop == null ? "loop" : "pickups",
                    loop == null ? "pickups are there but no loop to carry their heat" : "a loop without a pickup",
                    "give both, or neither");
        }
        if (loop != null && store == null) {
            throw new RigFault("rig", "store", "the loop has no store to carry heat to", "describe the store");
        }
        if (!emitters.isEmpty() && store == null) {
            throw new RigFault("rig", "emitters", "emitters draw from a store and there is none", "describe the store");
        }
        for (Switch s : switches) {
            boolean known = s.drives().equals("pump")
                    || emitters.stream().anyMatch(e -> e.name().equals(s.drives()));
            if (!known) {
                throw new RigFault(
                        "switches",
                        "drives",
                        "nothing here is called \"" + s.drives() + "\"",
                        "write pump, or the name of an emitter: "
                                + String.join(
                                        ", ",
                                        emitters.stream().map(Emitter::name).toList()));
            }
        }
    }

    /** The same room and stove with no store and no water at all. */
    public Rig withoutWater() {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, List.of(), null, null, List.of(),
                List.of());
    }

    /** The same rig with the emitters' fans (and their pumps) never running. */
    public Rig withoutFan() {
        List<Switch> left =
                switches.stream().filter(s -> s.drives().equals("pump")).toList();
        return new Rig(
                name,
                story,
                place,
                weather,
                room,
                stove,
                flue,
                fuel,
                habit,
                pickups,
                loop,
                store,
                emitters.stream().map(Emitter::idle).toList(),
                left);
    }

    /** The same rig in other weather. */
    public Rig withWeather(Outdoors other) {
        return new Rig(
                name, story, place, other, room, stove, flue, fuel, habit, pickups, loop, store, emitters, switches);
    }
}
