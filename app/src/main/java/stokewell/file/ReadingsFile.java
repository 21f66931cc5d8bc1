package stokewell.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table of any logger: readings of one or many sensors. The reader finds out by itself what can be found out, tells
 * what it took for what, and refuses the whole file where a row is broken or leaves a choice.
 *
 * @param name   what the user calls the file
 * @param zone   in which times without an offset were read
 * @param series one a sensor, in the order of the file
 * @param told   what the person should know
 */
public record ReadingsFile(String name, ZoneId zone, List<ReadingsSeries> series, List<String> told) {

    /** Reads a file. Nothing of it is given back where anything in it is broken. */
    public static ReadingsFile read(Path path, ReadingsAsk ask) throws IOException {
        String name = path.toString();
        List<String> told = new ArrayList<>();
        ReadingsText text = ReadingsText.of(path, name);
        if (!text.encoding().isEmpty()) told.add("letters read as " + text.encoding());
        if (ask.start().isPresent()) {
            text.from(ReadingsElapsed.find(name, text.head(), ask));
            told.add("times counted from " + ask.start().get());
        }
        ReadingsLayout layout = ReadingsLayout.find(name, text.head(), ask);
        ReadingsSurvey survey = ReadingsSurvey.of(name, text, layout, ask);
        if (survey.byRunning) {
            told.add("dates read as " + survey.order.word() + ": the other order would leap from month to month");
        }
        Collection<ReadingsGroup> groups = new ReadingsGather(name, layout, survey, ask, told).read(text);
        ZoneId zone = zone(layout, ask);
        boolean bare = false;
        List<ReadingsSeries> all = new ArrayList<>();
        ReadingsClock clock = new ReadingsClock(name, zone, told);
        for (ReadingsGroup group : groups) {
            if (group.size == 0) continue;
            for (int i = 0; i < group.size && !bare; i++) bare = group.offset[i] == ReadingsStamp.NONE;
            all.addAll(ReadingsOrder.series(name, group, clock, ask, told));
        }
        if (bare && ask.zone().isEmpty()) told.add("times carry no zone: read as " + zone + "; --zone says another");
        if (all.isEmpty()) {
            throw new ReadingsFault(name, 0, "no reading was found in it", missing(layout, ask));
        }
        refuseTwins(name, all);
        return new ReadingsFile(name, zone, List.copyOf(all), List.copyOf(told));
    }

    private static String missing(ReadingsLayout layout, ReadingsAsk ask) {
        return ask.map().isEmpty()
                ? "Look at its headings: " + String.join(", ", layout.headings)
                : "None of the columns of --map has one. Known: " + String.join(", ", layout.headings);
    }

    /** What was asked for, or what the heading of the times says, or that of the shop. */
    private static ZoneId zone(ReadingsLayout layout, ReadingsAsk ask) {
        if (ask.zone().isPresent()) return ask.zone().get();
        for (ReadingsLayout.Role role : new ReadingsLayout.Role[] {
            ReadingsLayout.Role.MOMENT, ReadingsLayout.Role.CLOCK, ReadingsLayout.Role.DATE
        }) {
            int column = layout.column(role);
            if (column < 0) continue;
            Optional<ZoneOffset> said = ReadingsHeading.zone(layout.headings.get(column));
            if (said.isPresent()) return said.get();
        }
        return ask.homeZone();
    }

    private static void refuseTwins(String name, List<ReadingsSeries> all) {
        Map<String, Integer> seen = new HashMap<>();
        for (ReadingsSeries s : all) {
            if (seen.merge(s.name(), 1, Integer::sum) > 1) {
                throw new ReadingsFault(
                        name,
                        0,
                        "two columns are called \"" + s.name() + "\"",
                        "Name them by their numbers: --map 2=room --map 3=store");
            }
        }
    }
}
