package stokewell.cli;

import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.fit.Spot;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/** Where a sensor sits. */
@Command(name = "place", description = "Say where in the rig a sensor sits, or what it shall be called.")
final class ReadingsPlaceVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    ShopChoice choice;

    @Parameters(index = "0", paramLabel = "SENSOR", description = "Its name, as readings list tells it.")
    String name;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLACE",
            description = "Such as room, store top, store bottom, outdoors, flow. An empty one takes the place away.")
    String place;

    @Option(names = "--name", paramLabel = "NAME", description = "A new name.")
    String newName;

    @Override
    public Integer call() {
        if (place == null && newName == null) {
            throw Complaint.usage("There is nothing to say of \"" + name + "\".", "Give a PLACE, or --name NAME.");
        }
        if (place != null && !place.isBlank() && Spot.named(place.strip()) == null) {
            throw Complaint.usage(
                    "\"" + place + "\" is no place that a sensor can have.",
                    "Places: " + Arrays.stream(Spot.values()).map(s -> s.words).collect(Collectors.joining(", "))
                            + ". A new name goes with --name.");
        }
        try (Shop shop = choice.openExisting()) {
            Sensor sensor = ReadingsShowVerb.find(shop, name);
            if (place != null) shop.place(sensor, place.strip());
            if (newName != null) shop.rename(sensor, newName.strip());
            String called = newName == null ? name : newName.strip();
            spec.commandLine()
                    .getOut()
                    .println(called + (place == null || place.isBlank() ? "" : ": " + place.strip()));
        }
        return 0;
    }
}
