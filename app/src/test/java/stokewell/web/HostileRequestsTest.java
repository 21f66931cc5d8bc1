package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What other sites, other machines and other people may send. */
class HostileRequestsTest {

    private static final String NIGHT = "{\"rig\":\"example:saddlery\"}";

    @TempDir
    static Path outside;

    private static Path folder;
    private static Caller caller;

    @BeforeAll
    static void begin() throws Exception {
        folder = Files.createDirectory(outside.resolve("rigs"));
        Files.writeString(outside.resolve("secret.yaml"), "name: the secret\n");
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

    private Caller.Answer with(String header, String value) {
        return caller.send("POST", "/api/night", NIGHT, Map.of(header, value));
    }

    @Test
    void theSameAskWithoutMaliceIsAnswered() {
        assertThat(with("Sec-Fetch-Site", "same-origin").status()).isEqualTo(200);
    }

    @Test
    void whoHasNoSessionGetsNothing() {
        assertThat(with("X-Stokewell-Token", "").code()).isEqualTo("session");
        assertThat(with("X-Stokewell-Token", "guess").code()).isEqualTo("session");
        assertThat(caller.send("GET", "/api/rigs", null, Map.of("X-Stokewell-Token", "", "Cookie", "stokewell-1=x"))
                        .code())
                .isEqualTo("session");
    }

    @Test
    void anotherSiteGetsNothing() {
        assertThat(with("Origin", "http://evil.example").code()).isEqualTo("origin");
        assertThat(with("Origin", "null").code()).isEqualTo("origin");
        assertThat(with("Origin", "https://127.0.0.1:" + caller.server.port()).code())
                .isEqualTo("origin");
        assertThat(with("Sec-Fetch-Site", "cross-site").code()).isEqualTo("origin");
        assertThat(with("Sec-Fetch-Site", "same-site").code()).isEqualTo("origin");
        assertThat(with("X-Stokewell", "").code()).isEqualTo("origin");
        assertThat(caller.send("GET", "/api/rigs", null, Map.of("Sec-Fetch-Site", "cross-site"))
                        .code())
                .isEqualTo("origin");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "x"})
    void aFormIsNotTakenForJson(String type) {
        assertThat(with("Content-Type", type).status()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "evil.example:PORT", "127.0.0.1", "127.0.0.1.evil.example:PORT", "[::1]:1"})
    void aNameThatWasMadeToPointHereIsNotAnswered(String host) throws Exception {
        String name = host.replace("PORT", String.valueOf(caller.server.port()));
        String answer = caller.raw("GET / HTTP/1.1\r\nHost: " + name + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 421").contains("\"host\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../secret.yaml",
                "/%2e%2e/secret.yaml",
                "/..%2fsecret.yaml",
                "/api/rigs/..%2fsecret",
                "/api/rigs/%2e%2e%2fsecret",
                "/api/rigs/..",
                "/api/rigs/secret%00",
                "/api/rigs/example:..%2f..%2fsecret",
                "/../openapi.yaml",
                "/%5c..%5csecret.yaml",
                "/Gate.class",
                "//etc/passwd",
                "/api/rigs/secret/versions/..%2f..",
                "/page/../../Gate.class"
            })
    void noPathLeadsOutOfTheFolder(String path) throws Exception {
        String answer = caller.raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + caller.server.port()
                + "\r\nX-Stokewell-Token: " + caller.server.token() + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).matches("(?s)HTTP/1.1 4\\d\\d.*").doesNotContain("the secret");
        clean(answer);
    }

    private static void clean(String answer) {
        assertThat(answer).doesNotContain("at stokewell.", "Exception", "at java.", "org.eclipse", "/rigs/");
    }

    @Test
    void aLinkThatLeadsOutOfTheFolderIsNoRig() throws Exception {
        Files.createSymbolicLink(folder.resolve("link.yaml"), outside.resolve("secret.yaml"));
        assertThat(caller.get("/api/rigs/link").status()).isEqualTo(404);
        assertThat(caller.get("/api/rigs").text()).doesNotContain("link");
        Files.delete(folder.resolve("link.yaml"));
    }

    @Test
    void noWeatherIsReadFromOutside() throws Exception {
        Files.writeString(outside.resolve("w.csv"), "the secret,1\n");
        String rig = Files.readString(Path.of("../examples/saddlery.yaml"));
        for (String file : List.of("../w.csv", outside.resolve("w.csv").toString(), "/etc/passwd", "/dev/zero")) {
            Caller.Answer asked = caller.post("/api/night", Map.of("text", rig, "weather", file));
            assertThat(asked.status()).as(file).isEqualTo(422);
            assertThat(asked.text()).doesNotContain("secret,1", "root:");
            String named = rig.replace("weather:\n", "weather:\n  file: \"" + file + "\"\n");
            Caller.Answer inText = caller.post("/api/night", Map.of("text", named));
            assertThat(inText.status()).as(file).isEqualTo(422);
            assertThat(inText.text()).doesNotContain("secret,1", "root:");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x.csv", "x.yaml", ".hidden.csv", "x", "a/b.csv"})
    void noWeatherFileIsPutElsewhere(String name) {
        String path = "/api/weather/" + java.net.URLEncoder.encode(name, java.nio.charset.StandardCharsets.UTF_8);
        Caller.Answer answer = caller.send("PUT", path, "a,b\n1,2\n", Map.of("Content-Type", "text/csv"));
        assertThat(answer.status()).isBetween(400, 422);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whatIsNoWeatherIsNotKept() {
        Caller.Answer answer =
                caller.send("PUT", "/api/weather/x.csv", "a,b\n1,2\n", Map.of("Content-Type", "text/csv"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.code()).isEqualTo("weather");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void tooMuchIsRefused() {
        Caller.Answer answer =
                caller.send("POST", "/api/night", "{\"text\":\"" + "x".repeat(3 << 20) + "\"}", Map.of());
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.code()).isEqualTo("large");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "null",
                "{",
                "{\"rig\":1}",
                "{\"rig\":{}}",
                "{\"rig\":\"example:saddlery\",\"set\":{}}",
                "{\"rig\":\"example:saddlery\",\"set\":[1]}",
                "{\"rig\":\"example:saddlery\",\"set\":[{\"key\":\"store\"}]}",
                "{\"rig\":\"example:saddlery\",\"set\":[{\"key\":\"\",\"value\":\"\"}]}",
                "{\"rig\":\"example:saddlery\",\"set\":[{\"key\":\"a.b.c\",\"value\":\"{{{\"}]}",
                "{\"rig\":\"example:saddlery\",\"drag\":{\"who\":\"a\",\"seq\":1.5}}",
                "{\"rig\":\"example:saddlery\",\"drag\":{\"who\":\"a\",\"seq\":1e400}}",
                "{\"rig\":\"example:saddlery\",\"units\":\"furlong\"}",
                "{\"rig\":\"example:saddlery\",\"without\":[\"roof\"]}",
                "{\"rig\":\"example:saddlery\",\"from\":\"yesterday\"}",
                "{\"rig\":\"example:saddlery\",\"until\":\"99999999999 h\"}",
                "{\"rig\":\"example:saddlery\",\"hour\":\"25:99\"}",
                "{\"rig\":\"example:saddlery\",\"limit\":\"-900 C\"}",
                "{\"rig\":\"example:saddlery\",\"weather\":\"snap: -25 C / -16 C for 999999999 days\"}",
                "{\"rig\":\"example:saddlery\",\"rig\":\"example:joinery\"}",
                "{\"text\":\"a: &x [*x, *x]\"}",
                "{\"text\":\"\\u0000\"}"
            })
    void brokenAsksAreToldAndBreakNothing(String body) {
        Caller.Answer answer = caller.send("POST", "/api/night", body, Map.of());
        assertThat(answer.status()).as(answer.text()).isBetween(400, 422);
        assertThat(answer.json().path("error").path("message").asString()).isNotBlank();
        clean(answer.text());
    }

    @Test
    void aNestWithoutABottomIsRefused() {
        String deep = "{\"rig\":" + "[".repeat(50_000);
        assertThat(caller.send("POST", "/api/night", deep, Map.of()).status()).isEqualTo(400);
        String yaml = "a: " + "[".repeat(50_000);
        assertThat(caller.post("/api/night", Map.of("text", yaml)).status()).isEqualTo(422);
    }

    @Test
    void aNightOfYearsIsRefused() {
        Caller.Answer answer = caller.post("/api/night", Map.of("rig", "example:saddlery", "until", "90000 h"));
        assertThat(answer.status()).isEqualTo(400);
    }

    @Test
    void wrongMethodsAreTold() {
        assertThat(caller.send("DELETE", "/api/rigs", null, Map.of()).status()).isEqualTo(405);
        assertThat(caller.send("TRACE", "/", null, Map.of()).status()).isBetween(400, 501);
        assertThat(caller.get("/api/nothing").status()).isEqualTo(404);
    }

    @Test
    void everyAnswerCarriesTheGuards() {
        for (String path : List.of("/", "/api/rigs", "/nothing", "/api/openapi.yaml", "/api/rigs/none")) {
            var headers = caller.get(path).whole().headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElse("")).startsWith("default-src 'none'");
            assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(headers.firstValue("Referrer-Policy")).contains("no-referrer");
            assertThat(headers.firstValue("Server")).isEmpty();
            assertThat(headers.firstValue("Access-Control-Allow-Origin")).isEmpty();
        }
    }

    @Test
    void theKeyOpensAndTheCookieCannotBeReadByAnyPage() {
        HttpRequest join = caller.request("/join?key=" + caller.server.token()).build();
        Caller.Answer answer = caller.send(join);
        assertThat(answer.status()).isEqualTo(302);
        String cookie = answer.whole().headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict");
        String pair = cookie.substring(0, cookie.indexOf(';'));
        assertThat(caller.send("GET", "/api/rigs", null, Map.of("X-Stokewell-Token", "", "Cookie", pair))
                        .status())
                .isEqualTo(200);
        assertThat(caller.send(caller.request("/join?key=x").build()).status()).isEqualTo(403);
        assertThat(caller.send(caller.request("/join").build()).status()).isEqualTo(403);
    }

    @Test
    void aCodeLetsOneInOnceAndOnlyWhereItIsShared() {
        assertThat(caller.post("/api/join", Map.of("code", caller.server.code()))
                        .status())
                .isEqualTo(403);
        try (Caller shared = new Caller(folder, true)) {
            String code = shared.server.code();
            Map<String, String> none = Map.of("X-Stokewell-Token", "");
            String body = "{\"code\":\"" + code.toLowerCase(java.util.Locale.ROOT) + "\"}";
            assertThat(shared.send("POST", "/api/join", body, none).status()).isEqualTo(204);
            assertThat(shared.send("POST", "/api/join", body, none).status()).isEqualTo(403);
            String next = shared.server.code();
            assertThat(next).isNotEqualTo(code);
            for (int i = 0; i < 10; i++) shared.send("POST", "/api/join", "{\"code\":\"AAAAAAAA\"}", none);
            assertThat(shared.server.code()).isNotEqualTo(next);
        }
    }
}
