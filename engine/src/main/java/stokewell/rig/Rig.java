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
        List<Switch> switches,

        @Entry(orElse = "{}", says = "What keeps it safe; what is left out is asked about.")
        Safety safety) {

    public Rig {
        Entries.check(Rig.class, "rig", name, story, place, weather, room, stove, flue, fuel, habit);
        pickups = List.copyOf(pickups);
        emitters = List.copyOf(emitters);
        switches = List.copyOf(switches);
        if (safety == null) safety = Safety.UNKNOWN;
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

    /** A rig of which nothing is known that bears on safety. */
    public Rig(
            String name,
            String story,
            Place place,
            Outdoors weather,
            Room room,
            Stove stove,
            Flue flue,
            Fuel fuel,
            Habit habit,
            List<Pickup> pickups,
            Loop loop,
            Store store,
            List<Emitter> emitters,
            List<Switch> switches) {
        this(
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
                emitters,
                switches,
                Safety.UNKNOWN);
    }

    /** The same room and stove with no store and no water at all. */
    public Rig withoutWater() {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, List.of(), null, null, List.of(),
                List.of(), safety);
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
                left,
                safety);
    }

    /** The same rig in other weather. */
    public Rig withWeather(Outdoors other) {
        return new Rig(
                name, story, place, other, room, stove, flue, fuel, habit, pickups, loop, store, emitters, switches,
                safety);
    }

    /** The same rig fired by another habit and with the air set otherwise. */
    public Rig fired(Habit other, Stove.Air air) {
        return new Rig(
                name,
                story,
                place,
                weather,
                room,
                stove.withAir(air),
                flue,
                fuel,
                other,
                pickups,
                loop,
                store,
                emitters,
                switches,
                safety);
    }

    /** The same rig under another flue. */
    public Rig flued(Flue other) {
        return new Rig(
                name, story, place, weather, room, stove, other, fuel, habit, pickups, loop, store, emitters, switches,
                safety);
    }

    /** The same rig with other switches. */
    public Rig switched(List<Switch> other) {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, pickups, loop, store, emitters, other,
                safety);
    }

    /** The same rig with its pickups otherwise. */
    public Rig pickedUp(List<Pickup> other) {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, other, loop, store, emitters, switches,
                safety);
    }

    /** The same rig with another loop. */
    public Rig plumbed(Loop other) {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, pickups, other, store, emitters, switches,
                safety);
    }

    /** The same rig, with other answers on its safety. */
    public Rig secured(Safety other) {
        return new Rig(
                name, story, place, weather, room, stove, flue, fuel, habit, pickups, loop, store, emitters, switches,
                other);
    }
}
