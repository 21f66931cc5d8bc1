package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.file.DateOrder;
import stokewell.file.ReadingsAsk;
import stokewell.file.ReadingsAsk.Wanted;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;
import stokewell.shop.Import;
import stokewell.shop.Shop;

/** Takes a logger's file in. */
@Command(
        name = "import",
        description = "Take the file of any logger in: all of it or, if a row is broken, nothing. Twice does no harm.",
        sortOptions = false)
final class ReadingsImportVerb implements Callable<Integer> {

    /** The decimal mark. */
    enum Mark {
        POINT,
        COMMA
    }

    @Spec
    CommandSpec spec;

    @Mixin
    ShopChoice choice;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Tables as text, one reading or many in a row.")
    List<Path> files;

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description = "Time zone of times that carry none: Europe/Oslo if the logger's clock shifts for summer, "
                    + "+01:00 if it does not. Default: the shop's, at first the computer's.")
    String zone;

    @Option(
            names = "--start",
            paramLabel = "MOMENT",
            description = "When the table begins, where its times are seconds, minutes or hours since the start.")
    String start;

    @Option(
            names = "--dates",
            paramLabel = "dmy|mdy|ymd",
            description = "Order of dates in numbers, where the file leaves a choice.")
    DateOrder dates;

    @Option(
            names = "--decimal",
            paramLabel = "point|comma",
            description = "The decimal mark, where the file leaves a choice.")
    Mark decimal;

    @Option(
            names = "--unit",
            paramLabel = "C|F|K",
            description = "Unit of columns that name none and can be temperatures.")
    String unit;

    @Option(
            names = "--sensor",
            paramLabel = "COLUMN",
            description = "The column that names the sensor, in a table with one reading a row.")
    String sensor;

    @Option(
            names = "--map",
            paramLabel = "COLUMN=SENSOR[:UNIT]",
            description = "Take in only the columns or sensors so named, under these names, such as "
                    + "--map \"T1=store top:C\". COLUMN may be its number. Repeatable.")
    List<String> map = new ArrayList<>();

    @Option(
            names = "--replace",
            description = "Where the shop has another value at the same time, the file's counts. Default: the shop's.")
    boolean replace;

    @Option(
            names = "--skip",
            description = "Leave out single rows that cannot be read, and tell them. Default: one refuses the file.")
    boolean skip;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Override
    public Integer call() throws Exception {
        for (Path file : files) InFile.check("", file);
        PrintWriter out = spec.commandLine().getOut();
        List<Wanted> wanted = wanted();
        Optional<SensorUnit> temperature = temperature();
        Optional<ZoneId> asked = Optional.ofNullable(zone).map(ShopChoice::zone);
        List<Import> imports = new ArrayList<>();
        try (Shop shop = choice.open()) {
            for (Path file : files) {
                ZoneId home = ShopChoice.zone(shop);
                ReadingsAsk ask = new ReadingsAsk(
                        asked,
                        home,
                        Optional.ofNullable(dates),
                        Optional.ofNullable(decimal).map(m -> m == Mark.POINT ? '.' : ','),
                        temperature,
                        Optional.ofNullable(sensor),
                        wanted,
                        skip,
                        Instant.now(),
                        begin());
                Import done = Import.of(shop, file, ask, replace);
                if (shop.zone().isEmpty()) shop.setZone(asked.orElse(home));
                imports.add(done);
                if (!json) {
                    out.print(ReadingsVerbPage.of(done, ShopChoice.zone(shop)));
                    out.flush();
                }
            }
        }
        if (json) out.println(ReadingsVerbJson.of(imports));
        return 0;
    }

    private Optional<LocalDateTime> begin() {
        if (start == null) return Optional.empty();
        LocalDate yearAgo = LocalDate.now(ZoneId.systemDefault()).minusYears(1);
        Moments said = Moments.read("--start", start, yearAgo.plusDays(1));
        if (said.day() == null) throw Complaint.usage("--start " + start + " has no day.", "Write 2024-01-15 08:00.");
        return Optional.of(said.or(said.day(), LocalTime.MIDNIGHT));
    }

    private Optional<SensorUnit> temperature() {
        if (unit == null) return Optional.empty();
        Optional<SensorUnit> named = SensorUnit.named(SensorKind.TEMPERATURE, unit);
        if (named.isEmpty() || unit.isBlank()) {
            throw Complaint.usage("--unit " + unit + " is not a unit of temperature.", "Known: C, F, K.");
        }
        return named;
    }

    private List<Wanted> wanted() {
        List<Wanted> wanted = new ArrayList<>();
        for (String text : map) {
            int equals = text.indexOf('=');
            if (equals <= 0 || equals == text.length() - 1) {
                throw Complaint.usage(
                        "--map " + text + " is none.", "Write --map \"COLUMN=SENSOR\" or \"COLUMN=SENSOR:C\".");
            }
            String column = text.substring(0, equals).strip();
            String name = text.substring(equals + 1).strip();
            int colon = name.lastIndexOf(':');
            Optional<SensorUnit> as = Optional.empty();
            if (colon > 0) {
                String symbol = name.substring(colon + 1);
                as = SensorUnit.named(symbol);
                if (as.isEmpty()) {
                    throw Complaint.usage(
                            "--map " + text + ": \"" + symbol + "\" is not a known unit.",
                            "Known: " + SensorUnit.list() + ".");
                }
                name = name.substring(0, colon).strip();
            }
            wanted.add(new Wanted(column, name, as));
        }
        return wanted;
    }
}
