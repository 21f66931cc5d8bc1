package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Rigs changed over the wire, with real files behind it. */
class RigEditsTest {

    @TempDir
    static Path folder;

    private static Path file;
    private static Caller caller;

    @BeforeAll
    static void begin() {
        file = folder.resolve("shed.yaml");
        caller = new Caller(folder);
    }

    @BeforeEach
    void anew() throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path old : all.sorted(Comparator.reverseOrder()).toList()) if (!old.equals(folder)) Files.delete(old);
        }
        Files.copy(Path.of("../examples/boat-shed.yaml"), file);
    }

    @AfterEach
    void nothingBroke() {
        assertThat(caller.errors()).isEmpty();
    }

    @AfterAll
    static void end() {
        caller.close();
    }

    private JsonNode shed() {
        return caller.get("/api/rigs/shed").json();
    }

    private Caller.Answer edit(String version, Object... edits) {
        return caller.post("/api/rigs/shed/edits", Map.of("version", version, "edits", List.of(edits)));
    }

    @Test
    void anEditChangesItsOwnPlaceAndNothingElseOfTheFile() throws Exception {
        String before = Files.readString(file);
        Caller.Answer answer = edit(
                shed().path("version").asString(),
                Map.of("set", "store.jacket", "value", "8 in XPS"),
                Map.of("remove", "store.lid"),
                Map.of("add", "room.windows", "value", "{area: 5 ft2, facing: north}"));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(Files.readString(file))
                .isEqualTo(before.replace("jacket: 6 in mineral wool", "jacket: 8 in XPS")
                        .replace("  lid: 8 in mineral wool\n", "")
                        .replace("facing: east}\n", "facing: east}\n    - {area: 5 ft2, facing: north}\n"));
        assertThat(answer.json().path("text").asString()).isEqualTo(Files.readString(file));
    }

    @Test
    void valuesTellWhatIsWrittenAndWhatIsADefault() {
        JsonNode jacket = value("store.jacket", "us");
        assertThat(jacket.path("written").asString()).isEqualTo("6 in mineral wool");
        assertThat(jacket.path("si").asDouble()).isEqualTo(6 * 0.0254);
        assertThat(jacket.path("text").asString()).isEqualTo("6 in mineral wool");
        assertThat(value("store.jacket", "si").path("text").asString()).isEqualTo("152.4 mm mineral wool");
        assertThat(value("store.supplyPort", "si").path("default").asBoolean()).isTrue();
        assertThat(value("emitters.0.airTubes.count", "si").path("entry").asString())
                .isEqualTo("emitters[].airTubes.count");
    }

    private JsonNode value(String key, String units) {
        for (JsonNode v : caller.get("/api/rigs/shed?units=" + units).json().path("values")) {
            if (v.path("key").asString().equals(key)) return v;
        }
        throw new AssertionError(key);
    }

    @Test
    void twoWhoSawTheSameCannotBothWrite() throws Exception {
        String seen = shed().path("version").asString();
        assertThat(edit(seen, Map.of("set", "store.jacket", "value", "7 in XPS"))
                        .status())
                .isEqualTo(200);
        Caller.Answer second = edit(seen, Map.of("set", "store.jacket", "value", "9 in XPS"));
        assertThat(second.status()).isEqualTo(409);
        assertThat(second.code()).isEqualTo("conflict");
        assertThat(second.json().path("error").path("version").asString())
                .isEqualTo(shed().path("version").asString());
        assertThat(Files.readString(file)).contains("7 in XPS").doesNotContain("9 in XPS");
    }

    @Test
    void whatAnEditorWroteMeanwhileIsNotWrittenOver() throws Exception {
        String seen = shed().path("version").asString();
        Files.writeString(file, Files.readString(file) + "# by hand\n");
        assertThat(edit(seen, Map.of("set", "store.jacket", "value", "9 in XPS"))
                        .status())
                .isEqualTo(409);
        assertThat(caller.put("/api/rigs/shed", Map.of("version", seen, "text", "name: x\n"))
                        .status())
                .isEqualTo(409);
        assertThat(Files.readString(file)).endsWith("# by hand\n");
    }

    @Test
    void ofEditsThatDoNotAllHoldNoneIsMade() throws Exception {
        String before = Files.readString(file);
        Caller.Answer answer = edit(
                shed().path("version").asString(),
                Map.of("set", "store.jacket", "value", "9 in XPS"),
                Map.of("set", "store.realLoss", "value", "300"));
        assertThat(answer.status()).isEqualTo(422);
        JsonNode fault = answer.json().path("error").path("faults").path(0);
        assertThat(fault.path("key").asString()).isEqualTo("store.realLoss");
        assertThat(fault.path("line").asInt()).isGreaterThan(80);
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void aWholeTextIsKeptEvenWithFaultsAndTheFaultsAreTold() throws Exception {
        String text = Files.readString(file).replace("mass: 440 lb", "mass: much");
        Caller.Answer answer = caller.put(
                "/api/rigs/shed", Map.of("version", shed().path("version").asString(), "text", text));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.json().path("faults").path(0).path("key").asString()).isEqualTo("stove.mass");
        assertThat(answer.json().path("values").size()).isGreaterThan(100);
        assertThat(Files.readString(file)).isEqualTo(text);
    }

    @Test
    void everyVersionCanBeReadAndComesBackAlsoAfterARestart() throws Exception {
        String first = Files.readString(file);
        for (String jacket : List.of("7 in XPS", "8 in XPS")) {
            edit(shed().path("version").asString(), Map.of("set", "store.jacket", "value", jacket));
        }
        caller.close();
        caller = new Caller(folder);
        JsonNode versions = caller.get("/api/rigs/shed/versions").json().path("versions");
        assertThat(versions).hasSize(3);
        assertThat(versions.path(0).path("now").asBoolean()).isTrue();
        assertThat(versions.path(2).path("number").asInt()).isEqualTo(1);
        assertThat(caller.get("/api/rigs/shed/versions/2").json().path("text").asString())
                .contains("jacket: 7 in XPS");
        Caller.Answer back = caller.post(
                "/api/rigs/shed/versions/1/restore",
                Map.of("version", shed().path("version").asString()));
        assertThat(back.status()).isEqualTo(200);
        assertThat(Files.readString(file)).isEqualTo(first);
        assertThat(caller.get("/api/rigs/shed/versions").json().path("versions"))
                .hasSize(4);
        assertThat(caller.get("/api/rigs/shed/versions/99").status()).isEqualTo(404);
    }

    @Test
    void anExampleIsReadAndRunButNotChanged() {
        JsonNode example = caller.get("/api/rigs/example:saddlery").json();
        assertThat(example.path("example").asBoolean()).isTrue();
        Caller.Answer answer = caller.post(
                "/api/rigs/example:saddlery/edits",
                Map.of(
                        "version",
                        example.path("version").asString(),
                        "edits",
                        List.of(Map.of("set", "name", "value", "mine"))));
        assertThat(answer.status()).isEqualTo(400);
    }

    @Test
    void aNewRigOfAnExampleBringsItsWeatherAlong() throws Exception {
        Caller.Answer answer = caller.post("/api/rigs", Map.of("example", "joinery", "name", "Räuber: \"Hütte\" / 2"));
        assertThat(answer.status()).isEqualTo(201);
        assertThat(answer.json().path("id").asString()).isEqualTo("rauber-hutte-2");
        assertThat(folder.resolve("weather/pvgis_tmy_45n_8e_2005_2023.csv")).exists();
        assertThat(caller.post("/api/night", Map.of("rig", "rauber-hutte-2")).status())
                .isEqualTo(200);
        assertThat(caller.post("/api/rigs", Map.of("example", "joinery", "name", "Räuber Hütte 2"))
                        .json()
                        .path("id")
                        .asString())
                .isEqualTo("rauber-hutte-2-2");
    }

    @Test
    void nothingIsLeftBesideTheRigsButTheHiddenFolder() throws Exception {
        edit(shed().path("version").asString(), Map.of("set", "store.jacket", "value", "7 in XPS"));
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("shed.yaml", ".stokewell");
        }
    }

    @Test
    void theExamplesThatThePageOpensAreThoseOfTheFolder() throws Exception {
        try (Stream<Path> all = Files.list(Path.of("../examples"))) {
            assertThat(all.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".yaml")))
                    .containsExactlyInAnyOrderElementsOf(
                            Examples.RIGS.stream().map(n -> n + ".yaml").toList());
        }
        try (Stream<Path> all = Files.list(Path.of("../examples/weather"))) {
            assertThat(all.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".csv")))
                    .containsExactlyInAnyOrderElementsOf(Examples.WEATHER);
        }
    }
}
