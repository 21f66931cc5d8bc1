package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * What the documents show is what a run gives today. A block under {@code <!-- ran: WORDS -->} is what that run prints; in a
 * table under {@code <!-- each row: WORDS | path unit decimals | … -->} the first cell is what each run is given besides, and
 * the next cells are read from its JSON. Run with {@code -Ddocuments=write} the test writes them anew instead.
 */
class DocumentsTest {

    private static final Pattern RAN = Pattern.compile("<!-- ran: (.*) -->");
    private static final Pattern ROWS = Pattern.compile("<!-- each row: (.*) -->");
    private static final Pattern WORD = Pattern.compile("(?:'[^']*'|\"[^\"]*\"|[^\\s'\"])+");
    private static final String NUMBER = "-?\\d+(\\.\\d+)?";
    private static final boolean WRITE = "write".equals(System.getProperty("documents"));

    static List<Path> documents() throws IOException {
        List<Path> found = new ArrayList<>(List.of(Path.of("../README.md")));
        try (Stream<Path> docs = Files.walk(Path.of("../docs"))) {
            docs.filter(p -> p.toString().endsWith(".md")).sorted().forEach(found::add);
        }
        found.removeIf(p -> !text(p).contains("<!-- ran: ") && !text(p).contains("<!-- each row: "));
        return found;
    }

    @ParameterizedTest
    @MethodSource("documents")
    void showsWhatARunGives(Path document) throws IOException {
        String now = anew(text(document).lines().toList());
        if (WRITE) Files.writeString(document, now);
        List<String> shown = words(text(document));
        List<String> given = words(now);
        assertThat(shown).hasSameSizeAs(given);
        for (int i = 0; i < shown.size(); i++) {
            assertThat(alike(shown.get(i), given.get(i)))
                    .as("%s of %s", shown.subList(Math.max(0, i - 8), i + 1), given.get(i))
                    .isTrue();
        }
    }

    @Test
    void allKeysAreThoseOfTheReader() throws IOException {
        Path document = Path.of("../docs/keys.md");
        String head = text(document).substring(0, text(document).indexOf("| key "));
        String now = head + run("keys").strip() + "\n";
        if (WRITE) Files.writeString(document, now);
        assertThat(text(document)).isEqualTo(now);
    }

    /** All but plots and bars. */
    private static List<String> words(String text) {
        return Stream.of(text.split("\\s+"))
                .filter(w -> !w.isBlank() && !w.matches("#+") && !w.matches(".*[\u2581-\u2588\u2800-\u28ff^].*"))
                .toList();
    }

    /** Another machine may round another way: a switch then comes a moment later, and a count is one more. */
    private static boolean alike(String shown, String given) {
        String a = bare(shown);
        String b = bare(given);
        if (a.matches("\\d+:\\d\\d") && b.matches("\\d+:\\d\\d")) return Math.abs(minutes(a) - minutes(b)) <= 15;
        if (!a.matches(NUMBER) || !b.matches(NUMBER)) return a.equals(b);
        double x = Double.parseDouble(a);
        double y = Double.parseDouble(b);
        int point = a.indexOf('.');
        double digit = point < 0 ? 1 : Math.pow(10, point + 1 - a.length());
        return Math.abs(x - y) <= Math.max(0.03 * Math.abs(x), 1.5 * digit);
    }

    private static String bare(String word) {
        return word.replaceAll("[.,;:)]+$", "");
    }

    private static int minutes(String clock) {
        String[] parts = clock.split(":");
        return 60 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
    }

    private static String anew(List<String> lines) {
        StringBuilder out = new StringBuilder();
        int i = 0;
        while (i < lines.size()) {
            String line = lines.get(i++);
            out.append(line).append('\n');
            Matcher ran = RAN.matcher(line);
            Matcher rows = ROWS.matcher(line);
            if (ran.matches()) {
                out.append("```\n").append(run(ran.group(1)).strip()).append("\n```\n");
                assertThat(lines.get(i)).as("a block after %s", line).isEqualTo("```");
                i = 1 + i + 1 + lines.subList(i + 1, lines.size()).indexOf("```");
            } else if (rows.matches()) {
                List<String> asked = List.of(rows.group(1).split(" \\| "));
                for (int head = 0; head < 2; head++) out.append(lines.get(i++)).append('\n');
                while (i < lines.size() && lines.get(i).startsWith("|")) {
                    out.append(row(lines.get(i++), asked)).append('\n');
                }
            }
        }
        return out.toString();
    }

    private static String row(String line, List<String> asked) {
        List<String> cells = new ArrayList<>(List.of(line.substring(1).split("(?<!\\\\)\\|")));
        String given = cells.get(0).strip();
        String more = given.startsWith("`") ? given.substring(1, given.length() - 1) : "";
        if (!more.isEmpty() && !more.startsWith("--")) more = "--set '" + more + "'";
        JsonNode json = json(asked.get(0) + " " + more);
        for (int k = 1; k < asked.size(); k++) cells.set(k, " " + cell(json, asked.get(k)) + " ");
        return "|" + String.join("|", cells) + "|";
    }

    /** A path with dots into the JSON, a unit, and how many decimals. */
    private static String cell(JsonNode json, String asked) {
        String[] words = asked.split(" ");
        JsonNode node = json;
        for (String step : words[0].split("\\.")) {
            if (node == null) break;
            node = step.matches("\\d+") ? node.get(Integer.parseInt(step)) : node.get(step);
        }
        if (node == null || node.isNull()) return "";
        if (words.length == 1) return node.asString();
        double value = node.asDouble();
        if (words[0].equals("boilMarginK") && value <= 0) return "none";
        double shown = switch (words[1]) {
            case "°F" -> value * 9 / 5 + 32;
            case "F°" -> value * 9 / 5;
            case "%" -> 100 * value;
            default -> value;
        };
        String unit = words[1].equals("F°") ? "°F" : words[1];
        return String.format(Locale.ROOT, "%." + words[2] + "f %s", shown, unit);
    }

    private static JsonNode json(String words) {
        return said(words + " --json").json();
    }

    private static String run(String words) {
        return said(words).out();
    }

    private static Shell.Said said(String words) {
        List<String> list = new ArrayList<>();
        Matcher word = WORD.matcher(words);
        while (word.find()) {
            String bare = word.group().replaceAll("['\"]", "");
            list.add(bare.startsWith("examples/") ? "../" + bare : bare);
        }
        Shell.Said said = Shell.say(list.toArray(String[]::new));
        // 3: a fire is forbidden, and the answer is there all the same
        assertThat(said.status()).as(words + "\n" + said.err()).isIn(0, 3);
        return said;
    }

    private static String text(Path document) {
        try {
            return Files.readString(document);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
