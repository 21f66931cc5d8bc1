package stokewell.show;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

/** Several rigs, or one with changes, a row each: as a table to read, as CSV, as JSON. */
public final class Lineup {

    /**
     * One rig and its night.
     *
     * @param file    where it is written
     * @param changes what was set over the file
     * @param facts   with its weather and all that was found on it
     */
    public record Row(String file, List<String> changes, Night night, CardFacts facts) {

        public Row {
            changes = List.copyOf(changes);
        }

        Check check() {
            return facts.check();
        }
    }

    /** A number that each row has. @param head words over it @param shown whether the table has room for it */
    private record Column(String head, String unit, int decimals, boolean shown, ToDoubleFunction<Row> value) {

        String of(Row row) {
            double v = value.applyAsDouble(row);
            if (v == Double.POSITIVE_INFINITY) return head.equals("boils in") ? "never" : "all";
            return Numbers.of(v, decimals);
        }
    }

    private static final int NAME = 24;
    private static final int FIELD = 8;

    private final List<Row> rows;
    private final Measure as;
    private final List<Column> columns;

    /** @param rows at least one, all asked the same */
    public Lineup(List<Row> rows, UnitSystem units) {
        this.rows = rows.stream()
                .map(r -> new Row(r.file, r.changes, r.night, r.facts.spoken(units)))
                .toList();
        as = Measure.plain(units);
        columns = columns();
    }

    private List<Column> columns() {
        Night first = rows.get(0).night;
        String hour = Clock.hour(first.at(first.morning().time()));
        String c = as.scaleUnit();
        String k = as.differenceUnit();
        List<Column> all = new ArrayList<>();
        all.add(new Column(
                "room " + hour, c, 1, true, r -> as.scale(r.night.morning().room())));
        all.add(new Column(
                "lowest room", c, 1, true, r -> as.scale(r.night.lowestRoom().room())));
        all.add(new Column("above " + as.setting(first.limit()), "h", 1, false, r -> r.night.hoursAbove()));
        all.add(new Column("hours carried", "h", 1, true, r -> r.night.hoursCarried()));
        all.add(new Column(
                "to boiling",
                k,
                0,
                true,
                r -> as.differenceNumber(r.night.boil().margin())));
        all.add(new Column("boils in", "min", 1, true, Lineup::boils));
        all.add(new Column("boiling", "min", 0, false, r -> r.night.boilingMinutes()));
        all.add(new Column("wood burnt", as.massUnit(), 0, true, r -> as.massNumber(r.night.wood())));
        String stack = rows.get(0).facts.stack().word;
        all.add(new Column(
                "wood, stacked",
                stack,
                4,
                false,
                r -> r.facts.stack().count(r.night.wood(), r.facts.stackedDensity())));
        all.add(new Column("loads", "", 0, false, r -> r.night.loads()));
        all.add(new Column("fire's heat into water", "%", 1, false, r -> 100 * r.night.waterShare()));
        all.add(new Column(
                "store mean " + hour,
                c,
                0,
                false,
                r -> as.scale(r.night.morning().storeMean())));
        all.add(new Column(
                "store top " + hour,
                c,
                0,
                false,
                r -> as.scale(r.night.morning().storeTop())));
        all.add(new Column("hottest stove body", c, 0, false, r -> as.scale(r.night.hottestBody())));
        return all;
    }

    /** The soonest of its pickups, min; NaN without one. */
    private static double boils(Row row) {
        return row.night.minutesToBoil().stream()
                .mapToDouble(Night.ToBoil::minutes)
                .min()
                .orElse(Double.NaN);
    }

    /** What a fire on it may be called, in a word or two. */
    private static String judged(Check check) {
        return switch (check.worst()) {
            case STOP -> "STOP";
            case MEND -> check.at(Level.MEND).size() + " mend";
            case MIND -> check.at(Level.MIND).size() + " mind";
            case FINE -> "fine";
        };
    }

    /** The table for a terminal. */
    public String text() {
        Plain out = new Plain(NAME);
        List<Column> shown = columns.stream().filter(Column::shown).toList();
        for (int line = 0; line < 3; line++) {
            StringBuilder head = new StringBuilder(Plain.left("", NAME));
            head.append(Plain.right(line == 1 ? "check" : "", FIELD));
            for (Column c : shown) {
                head.append(Plain.right(line == 2 ? c.unit() : c.head().split(" ", 2)[line], FIELD));
            }
            out.raw(head.toString().stripTrailing());
        }
        for (Row r : rows) {
            String name = name(r);
            boolean above = name.length() >= NAME;
            if (above) out.words("", name);
            StringBuilder line = new StringBuilder(Plain.left(above ? "" : Plain.name(name, NAME), NAME));
            line.append(Plain.right(judged(r.check()), FIELD));
            for (Column c : shown) line.append(Plain.right(c.of(r), FIELD));
            out.raw(line.toString());
        }
        out.blank();
        for (Row r : rows) {
            String stop = Stops.forbids(r.check());
            if (!stop.isEmpty()) out.words("! STOP, no fire: ", Ascii.of(name(r) + ". " + stop));
        }
        told(out, "weather: ", r -> r.facts.weather());
        if (rows.stream().map(r -> r.facts.weather()).distinct().count() > 1) {
            out.words("! ", "Not all in the same weather: --weather FILE puts them into one.");
        }
        told(
                out,
                "start: ",
                r -> Spoken.in(r.night.start(), as.us() ? UnitSystem.US : UnitSystem.SI)
                        .replace("°", ""));
        out.words("! ", "What is to mend or to mind: ./stokewell check RIG tells all.");
        out.words("! ", Cautions.DECIDES);
        return out.toString();
    }

    /** Each thing once; where it is not the same for all, of whom it is. */
    private void told(Plain out, String mark, Function<Row, String> of) {
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (Row r : rows)
            by.computeIfAbsent(of.apply(r), k -> new ArrayList<>()).add(name(r));
        by.forEach(
                (words, names) -> out.words(mark, by.size() == 1 ? words : String.join(" | ", names) + ": " + words));
    }

    /** What tells a row from the others. */
    private String name(Row row) {
        if (!row.changes.isEmpty() && rows.stream().map(Row::file).distinct().count() == 1) {
            return String.join("; ", row.changes);
        }
        String rig = row.night.rig();
        boolean twice = rows.stream()
                        .filter(r -> r.night.rig().equals(rig))
                        .map(Row::file)
                        .distinct()
                        .count()
                > 1;
        String own = twice ? row.file : rig;
        return row.changes.isEmpty() ? own : own + ", " + String.join("; ", row.changes);
    }

    /** The table as RFC 4180, every number with its unit in the header. */
    public void csv(Writer to) throws IOException {
        CsvWriter out = CsvWriter.builder().build(to);
        List<String> head = new ArrayList<>(List.of("rig", "file", "changes", "weather", "check", "stop"));
        for (Column c : columns) head.add(c.unit().isEmpty() ? c.head() : c.head() + " [" + c.unit() + "]");
        out.writeRecord(head);
        for (Row r : rows) {
            List<String> cells = new ArrayList<>(Arrays.asList(
                    r.night.rig(),
                    r.file,
                    String.join("; ", r.changes),
                    r.facts.weather(),
                    r.check().worst().name().toLowerCase(Locale.ROOT),
                    r.check().at(Level.STOP).stream()
                            .map(Finding::what)
                            .findFirst()
                            .orElse("")));
            for (Column c : columns) {
                double v = c.value().applyAsDouble(r);
                cells.add(Double.isNaN(v) ? "" : Double.isInfinite(v) ? c.of(r) : Numbers.bare(v, 4));
            }
            out.writeRecord(cells);
        }
        out.flush();
    }

    /** Each row as {@link NightJson} tells a night, under what tells it from the others; always in SI. */
    public void json(Writer to) {
        try (Keyed json = new Keyed(to)) {
            json.list("rigs");
            for (Row r : rows) {
                json.item().text("file", r.file).texts("changes", r.changes).text("weather", r.facts.weather());
                json.text("worst", r.check().worst().name().toLowerCase(Locale.ROOT));
                NightJson.write(r.night, r.facts, json);
                json.shut();
            }
            json.done();
        }
    }
}
