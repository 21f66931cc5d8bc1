package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Runs asked for over the wire. */
@Timeout(60)
class NightsAndJobsTest {

    @TempDir
    static Path folder;

    private static Caller caller;

    @BeforeAll
    static void begin() {
        caller = new Caller(folder);
    }

    @AfterEach
    void nothingBroke() {
        assertThat(caller.errors()).isEmpty();
    }

    @AfterAll
    static void end() {
        caller.close();
    }

    private static Map<String, Object> drag(String who, int seq, String jacket) {
        return Map.of(
                "rig",
                "example:saddlery",
                "set",
                List.of(Map.of("key", "store.jacket", "value", jacket + " mm sheep wool")),
                "drag",
                Map.of("who", who, "seq", seq));
    }

    private static double room(Caller.Answer answer) {
        return answer.json().path("view").path("numbers").path("morningRoom").asDouble();
    }

    @Test
    void aDragAnswersWithinHundredthsOfWhatTheVerbSays() {
        for (int seq = 1; seq <= 4; seq++) {
            Caller.Answer rough = caller.post("/api/night", drag("slow", seq, String.valueOf(100 + 20 * seq)));
            assertThat(rough.status()).isEqualTo(200);
            assertThat(rough.json().path("seq").asInt()).isEqualTo(seq);
            assertThat(rough.json().path("rough").asBoolean()).isTrue();
            Map<String, Object> still = new java.util.HashMap<>(drag("me", seq, String.valueOf(100 + 20 * seq)));
            still.remove("drag");
            Caller.Answer exact = caller.post("/api/night", still);
            assertThat(exact.json().path("rough").asBoolean()).isFalse();
            assertThat(room(rough)).isCloseTo(room(exact), within(0.05));
        }
    }

    @Test
    void inTheWeatherOfAFileADragIsTenthsOff() {
        caller.post("/api/night", Map.of("rig", "example:joinery"));
        for (int seq = 1; seq <= 3; seq++) {
            Map<String, Object> leaks = new java.util.HashMap<>(Map.of(
                    "rig",
                    "example:joinery",
                    "set",
                    List.of(Map.of("key", "room.leakage.at50Pa", "value", (8 + 0.5 * seq) + " 1/h")),
                    "drag",
                    Map.of("who", "joiner", "seq", seq)));
            Caller.Answer rough = caller.post("/api/night", leaks);
            leaks.remove("drag");
            assertThat(room(rough)).isCloseTo(room(caller.post("/api/night", leaks)), within(0.3));
        }
    }

    @Test
    void ofManyQuickDragsTheLastIsAnsweredAndTheRestAreStale() {
        List<CompletableFuture<HttpResponse<String>>> sent = new ArrayList<>();
        for (int seq = 1; seq <= 30; seq++) {
            String body = Body.JSON.writeValueAsString(drag("me", seq, String.valueOf(100 + seq)));
            HttpRequest request = caller.request("/api/night")
                    .header("X-Stokewell-Token", caller.server.token())
                    .header("X-Stokewell", "1")
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body))
                    .build();
            sent.add(caller.client().sendAsync(request, HttpResponse.BodyHandlers.ofString()));
        }
        int stale = 0;
        for (CompletableFuture<HttpResponse<String>> one : sent) {
            HttpResponse<String> answer = one.join();
            assertThat(answer.statusCode()).isIn(200, 409);
            if (answer.statusCode() == 409) {
                assertThat(answer.body()).contains("\"stale\"");
                stale++;
            }
        }
        assertThat(stale).isGreaterThan(10);
        assertThat(caller.post("/api/night", drag("me", 31, "150")).status()).isEqualTo(200);
    }

    private JsonNode job(Map<String, Object> ask, List<String> names, List<JsonNode> parts) throws Exception {
        Caller.Answer begun = caller.post("/api/jobs", ask);
        assertThat(begun.status()).as(begun.text()).isEqualTo(202);
        return listen(begun.json().path("job").asString(), names, parts);
    }

    private JsonNode listen(String job, List<String> names, List<JsonNode> parts) throws Exception {
        HttpRequest request = caller.request("/api/jobs/" + job + "/events")
                .header("Accept", "text/event-stream")
                .header("X-Stokewell-Token", caller.server.token())
                .build();
        HttpResponse<Stream<String>> lines = caller.client().send(request, HttpResponse.BodyHandlers.ofLines());
        assertThat(lines.headers().firstValue("Content-Type").orElse("")).startsWith("text/event-stream");
        JsonNode last = null;
        String name = "";
        for (String line : (Iterable<String>) lines.body()::iterator) {
            if (line.startsWith("event: ")) names.add(name = line.substring(7));
            if (!line.startsWith("data: ")) continue;
            last = Body.JSON.readTree(line.substring(6));
            if (name.equals("part")) parts.add(last);
        }
        return last;
    }

    @Test
    void aSeasonTellsEachMonthAsItEnds() throws Exception {
        List<String> names = new ArrayList<>();
        List<JsonNode> parts = new ArrayList<>();
        Map<String, Object> ask = Map.of(
                "kind",
                "season",
                "rig",
                "example:saddlery",
                "weather",
                "example:pvgis_tmy_45n_8e_2005_2023.csv",
                "from",
                "10 Jan",
                "until",
                "5 Mar");
        JsonNode done = job(ask, names, parts);
        assertThat(names.get(names.size() - 1)).as(String.valueOf(done)).isEqualTo("done");
        assertThat(names.indexOf("part")).isLessThan(names.size() - 5);
        assertThat(parts).hasSize(3);
        JsonNode months = done.path("season").path("months");
        assertThat(months).hasSize(3);
        for (int i = 0; i < 3; i++) {
            JsonNode told = parts.get(i).path("month");
            assertThat(told.path("month").asString())
                    .isEqualTo(months.path(i).path("month").asString());
            assertThat(told.path("woodKg").asDouble())
                    .isCloseTo(months.path(i).path("woodKg").asDouble(), within(0.001));
        }
    }

    @Test
    void aSeasonThatIsStoppedEndsSoonAndSaysSo() throws Exception {
        String job = caller.post("/api/jobs", Map.of("kind", "season", "rig", "example:joinery"))
                .json()
                .path("job")
                .asString();
        while (!caller.get("/api/jobs/" + job).json().path("state").asString().equals("running")) Thread.sleep(5);
        assertThat(caller.delete("/api/jobs/" + job).status()).isEqualTo(204);
        List<String> names = new ArrayList<>();
        listen(job, names, new ArrayList<>());
        assertThat(names.get(names.size() - 1)).isEqualTo("stopped");
        assertThat(caller.get("/api/jobs/" + job).json().path("state").asString())
                .isEqualTo("stopped");
    }

    @Test
    void helpsAreRankedEachIsWhatItsSettingsRunToAndNewStopsAreTold() throws Exception {
        List<String> names = new ArrayList<>();
        List<JsonNode> parts = new ArrayList<>();
        JsonNode done = job(Map.of("kind", "helps", "rig", "example:saddlery"), names, parts);
        JsonNode helps = done.path("helps");
        assertThat(helps.size()).isGreaterThan(8).isEqualTo(parts.size());
        double before = Double.POSITIVE_INFINITY;
        for (JsonNode help : helps) {
            assertThat(help.has("newStops")).isTrue();
            assertThat(help.path("effort").asString()).isNotBlank();
            if (help.path("morningK").isNull()) continue;
            assertThat(help.path("morningK").asDouble()).isLessThanOrEqualTo(before);
            before = help.path("morningK").asDouble();
        }
        // what keeps the heat in saves wood for the same warmth; more wood in one load saves none
        assertThat(saved(helps, "floor")).isGreaterThan(0.3);
        assertThat(saved(helps, "drier")).isGreaterThan(0.3);
        assertThat(Math.abs(saved(helps, "load"))).isLessThan(0.3);
        JsonNode best = helps.path(0);
        double base = room(caller.post("/api/night", Map.of("rig", "example:saddlery")));
        Caller.Answer tried = caller.post("/api/night", Map.of("rig", "example:saddlery", "set", best.path("set")));
        // settling ends when a day changes nothing by more than 4 mK, and a help begins from where the rig stands
        assertThat(room(tried) - base).isCloseTo(best.path("morningK").asDouble(), within(0.005));
        assertThat(best.path("morningK").asDouble()).isGreaterThan(0.3);
    }

    private static double saved(JsonNode helps, String id) {
        for (JsonNode h : helps)
            if (h.path("id").asString().equals(id))
                return h.path("sameWarmthKg").asDouble();
        return Double.NaN;
    }

    @Test
    void whatIsNoJobIsRefusedAtOnce() {
        assertThat(caller.post("/api/jobs", Map.of("kind", "x", "rig", "example:saddlery"))
                        .status())
                .isEqualTo(400);
        assertThat(caller.post("/api/jobs", Map.of("kind", "season", "rig", "none"))
                        .status())
                .isEqualTo(404);
        assertThat(caller.get("/api/jobs/00").status()).isEqualTo(404);
    }

    @Test
    void aSeasonWithoutHourlyWeatherFailsWithWords() throws Exception {
        List<String> names = new ArrayList<>();
        JsonNode last = job(Map.of("kind", "season", "rig", "example:saddlery"), names, new ArrayList<>());
        assertThat(names.get(names.size() - 1)).isEqualTo("failed");
        assertThat(last.path("error").path("message").asString()).contains("hourly weather");
    }

    @ParameterizedTest
    @ValueSource(strings = {"html", "csv", "json", "png", "pdf"})
    void aRigWithAStopSaysSoInEveryExport(String form) throws Exception {
        // asked only of a drill's outcome: a night alone cannot see it
        Map<String, Object> ask = Map.of(
                "rig",
                "example:saddlery",
                "set",
                List.of(Map.of("key", "safety.surroundings.coldAndFull", "value", "400 h")));
        Caller.Answer checked = caller.post("/api/check", ask);
        assertThat(checked.json().path("stop").asBoolean()).as(checked.text()).isTrue();
        HttpResponse<byte[]> made = export(form, ask);
        assertThat(made.statusCode()).isEqualTo(200);
        String text = new String(made.body(), java.nio.charset.StandardCharsets.UTF_8);
        switch (form) {
            case "html" -> assertThat(text).contains("STOP").doesNotContain("http://", "src=\"/");
            case "csv" -> assertThat(text).startsWith("# STOP, do not light a fire");
            case "json" -> assertThat(text).contains("\"stop\":true");
            case "pdf" -> assertThat(text).startsWith("%PDF-");
            default -> {
                byte[] plain = export(form, Map.of("rig", "example:saddlery")).body();
                assertThat(made.body()).isNotEqualTo(plain);
            }
        }
    }

    private HttpResponse<byte[]> export(String form, Map<String, Object> ask) throws Exception {
        HttpRequest request = caller.request("/api/export/" + form)
                .header("X-Stokewell-Token", caller.server.token())
                .header("X-Stokewell", "1")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(Body.JSON.writeValueAsString(ask)))
                .build();
        return caller.client().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void aStopThatOnlyADrillFindsIsTheNightsToo() {
        Map<String, Object> ask = Map.of(
                "rig",
                "example:saddlery",
                "set",
                List.of(Map.of("key", "safety.surroundings.coldAndFull", "value", "400 h")));
        caller.post("/api/check", ask);
        assertThat(caller.post("/api/night", ask).json().path("stop").asBoolean())
                .isTrue();
    }

    @Test
    void aWeatherFileThatWasPutInIsReadByName() throws Exception {
        String file = Files.readString(Path.of("../examples/weather/pvgis_tmy_45n_8e_2005_2023.csv"));
        assertThat(caller.send("PUT", "/api/weather/mine.csv", file, Map.of("Content-Type", "text/csv"))
                        .status())
                .isEqualTo(201);
        assertThat(caller.send("PUT", "/api/weather/mine.csv", file, Map.of("Content-Type", "text/csv"))
                        .status())
                .isEqualTo(409);
        assertThat(caller.get("/api/weather").text()).contains("weather/mine.csv");
        Caller.Answer night =
                caller.post("/api/night", Map.of("rig", "example:saddlery", "weather", "weather/mine.csv"));
        assertThat(night.status()).as(night.text()).isEqualTo(200);
    }
}
