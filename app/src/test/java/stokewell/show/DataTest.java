package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.run.Trace;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

class DataTest {

    private static final CardFacts FACTS = CardFacts.of(400, UnitSystem.SI);

    private static List<CsvRecord> rows(String csv) {
        List<CsvRecord> rows = new ArrayList<>();
        CsvReader.builder().ofCsvRecord(csv).forEach(rows::add);
        return rows;
    }

    @Test
    void theTraceReadsBackWithItsUnits() throws IOException {
        StringBuilder out = new StringBuilder();
        TraceCsv.write(FakeRuns.cold(), UnitSystem.US, out);
        List<CsvRecord> rows = rows(out.toString());
        assertThat(rows).hasSize(290);
        assertThat(rows.get(0).getFields())
                .startsWith("time", "room [F]", "outdoors [F]")
                .contains("draft [in wc]", "air [lb/h]", "bed [lb]", "boil margin [F]", "minutes to boil coil [min]")
                .contains("power heat released [kBtu/h]", "runs pump");
        assertThat(rows.get(1).getField(0)).isEqualTo("2023-01-16T08:00:00");
        assertThat(Double.parseDouble(rows.get(1).getField(1))).isEqualTo(46.4, within(1e-3));
        int margin = rows.get(0).getFields().indexOf("boil margin [F]");
        assertThat(rows.get(1).getField(margin))
                .as("what is infinite is left out")
                .isEmpty();
        for (CsvRecord row : rows) assertThat(row.getFieldCount()).isEqualTo(24);
        LocalDateTime last = LocalDateTime.parse(rows.get(289).getField(0));
        assertThat(last).isEqualTo(LocalDateTime.of(2023, 1, 17, 8, 0));
    }

    @Test
    void theTraceOfASeasonReadsBackToo() throws IOException {
        StringBuilder out = new StringBuilder();
        TraceCsv.write(FakeRuns.season(), UnitSystem.SI, out);
        assertThat(rows(out.toString())).hasSize(60 * 24 + 1);
    }

    @Test
    void aNameWithACommaAQuoteAndALineEndStaysOneField() throws IOException {
        Trace trace = FakeRuns.trace(0, 60, List.of("water \"big\", old\ncoil"), List.of(new double[] {300}));
        StringWriter out = new StringWriter();
        TraceCsv.write(trace, LocalDateTime.of(2023, 1, 1, 0, 0), out);
        assertThat(rows(out.toString()).get(0).getFields()).containsExactly("time", "water \"big\", old\ncoil");
    }

    /** Paths of keys to their values; null where null stands. */
    private static Map<String, String> flat(String json) {
        Map<String, String> found = new LinkedHashMap<>();
        List<String> path = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            String key = "";
            for (JsonToken t = parser.nextToken(); t != null; t = parser.nextToken()) {
                switch (t) {
                    case PROPERTY_NAME -> key = parser.currentName();
                    case START_OBJECT, START_ARRAY -> {
                        path.add(key);
                        key = "";
                    }
                    case END_OBJECT, END_ARRAY -> {
                        path.remove(path.size() - 1);
                        key = "";
                    }
                    default -> {
                        String whole = (String.join("/", path) + "/" + key).replaceAll("/+", "/");
                        found.put(whole, t == JsonToken.VALUE_NULL ? null : parser.getString());
                    }
                }
            }
        }
        return found;
    }

    private static String json(Night night) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        NightJson.write(night, FACTS, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aNightHasTheKeysThatProgramsCountOn() {
        Map<String, String> night = flat(json(FakeRuns.cold()));
        assertThat(night)
                .containsEntry("/rig", "Tern Ledge & Sons")
                .containsEntry("/from", "2023-01-16T08:00:00")
                .containsEntry("/until", "2023-01-17T08:00:00")
                .containsEntry("/morning/time", "2023-01-17T07:30:00")
                .containsEntry("/morning/roomC", "8.43")
                .containsEntry("/morning/storeMeanC", "33")
                .containsEntry("/morning/storeTopC", "43")
                .containsEntry("/lowestRoom/time", "2023-01-17T08:00:00")
                .containsEntry("/lowestRoom/roomC", "8")
                .containsEntry("/hoursAbove", "21.25")
                .containsEntry("/hoursCarried", "11.5")
                .containsEntry("/limitC", "10")
                .containsEntry("/boilMarginK", "6.4")
                .containsEntry("/boilMarginTime", "2023-01-16T17:00:00")
                .containsEntry("/boilMarginWhere", "coil")
                .containsEntry("/boilingMinutes", "0")
                .containsEntry("/steamKg", "0")
                .containsEntry("/wood/kg", "25")
                .containsEntry("/wood/volume", "0.0625")
                .containsEntry("/wood/unit", "stere")
                .containsEntry("/wood/loads", "5")
                .containsEntry("/waterShare", "0.152")
                .containsEntry("/charge/roomLeftKWh", "12")
                .containsEntry("/charge/comingKWh", "10.5")
                .containsEntry("/charge/spareKWh", "1.5")
                .containsEntry("/charge/oneMoreLoadFits", "until")
                .containsEntry("/charge/lastSafeLoad", "2023-01-16T15:15:00")
                .containsEntry("/heatKWh/fuel", "100")
                .containsEntry("/heatKWh/flue gas", "6")
                .containsEntry("/heatKWh/sun", "-15")
                .containsEntry("/pumpStarts", "59")
                .containsEntry("/fanStarts", "1")
                .containsEntry("/steps", "991")
                .containsEntry("/rhsEvaluations", "6970")
                .containsEntry("/solveMillis", "12.5");
        assertThat(night)
                .containsKeys("/start", "/minutesToBoil/minutes", "/drives/hours", "/cautions/", "/ledgerResidual");
    }

    @Test
    void theHeatOfANightAddsUp() {
        double sum = 0;
        for (Map.Entry<String, String> e : flat(json(FakeRuns.cold())).entrySet()) {
            if (!e.getKey().startsWith("/heatKWh/")) continue;
            double kwh = Double.parseDouble(e.getValue());
            sum += e.getKey().endsWith("/fuel") ? kwh : -kwh;
        }
        assertThat(sum).isEqualTo(0, within(1e-3));
    }

    @Test
    void whatIsNoNumberIsNull() {
        Map<String, String> night = flat(json(FakeRuns.dry()));
        for (String key : new String[] {
            "/morning/storeMeanC", "/hoursCarried", "/boilMarginK", "/boilMarginTime", "/boilMarginWhere", "/charge"
        }) {
            assertThat(night).containsEntry(key, null);
        }
        assertThat(json(FakeRuns.dry())).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void theWriterStaysOpen() {
        StringBuilder closed = new StringBuilder();
        StringWriter out = new StringWriter() {
            @Override
            public void close() {
                closed.append("closed");
            }
        };
        NightJson.write(FakeRuns.cold(), 400, out);
        assertThat(closed).isEmpty();
        assertThat(out.toString()).startsWith("{").endsWith("}");
    }

    @Test
    void aSeasonHasItsMonthsAndMornings() {
        StringWriter out = new StringWriter();
        SeasonJson.write(FakeRuns.season(), CardFacts.of(400, UnitSystem.US), out);
        Map<String, String> season = flat(out.toString());
        assertThat(season)
                .containsEntry("/months/month", "2023-01")
                .containsEntry("/months/woodKg", "760")
                .containsEntry("/mornings/roomC", "5.6")
                .containsEntry("/wood/unit", "stere")
                .containsEntry("/hoursBelow", "136")
                .containsEntry("/boilingMinutes", "34");
    }
}
