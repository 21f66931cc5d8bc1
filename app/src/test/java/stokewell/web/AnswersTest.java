package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.cli.PageAsking;
import stokewell.file.Keys;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.run.NightRun;

/** Who reads a finding never has to open the rig file: whatever key it names can be answered on the page. */
final class AnswersTest {

    private static final Path RULES = Path.of("../engine/src/main/java/stokewell/check");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern NAMED = Pattern.compile("(?<![\\w.])[a-z]\\w*(?:\\.\\w+)+");

    @TempDir
    Path folder;

    private static final Map<String, Keys.Row> ROWS =
            Keys.rows(UnitSystem.SI).stream().collect(Collectors.toMap(Keys.Row::key, Function.identity()));

    /** Keys that hold a value and stand in a text. */
    private static Set<String> keys(String text) {
        return NAMED.matcher(text)
                .results()
                .map(MatchResult::group)
                .filter(ROWS::containsKey)
                .filter(key -> !List.of("part", "kinds").contains(ROWS.get(key).kind()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * In the words of all rules, whichever rig they speak of: those of safety, which no name of a finding is like. And in all
     * that is to be done on some rigs.
     */
    private static Set<String> named() throws Exception {
        Set<String> all = new TreeSet<>();
        try (Stream<Path> rules = Files.list(RULES)) {
            for (Path rule : rules.toList()) {
                String code = Files.readString(rule);
                LITERAL.matcher(code).results().forEach(text -> all.addAll(keys(text.group(1))));
            }
        }
        all.removeIf(key -> !key.startsWith("safety."));
        for (String rig : Examples.RIGS) for (Finding f : found(rig)) all.addAll(keys(f.remedy()));
        return all;
    }

    private static List<Finding> found(String example) throws Exception {
        Path file = Path.of("../examples", example + ".yaml");
        Rig rig = RigFile.read(file, List.of()).rig();
        Asking.NightAsked asked =
                new PageAsking().night(rig, file, new Asking.Wish(null, null, null, null, null, null, UnitSystem.SI));
        return Check.of(rig, NightRun.run(rig, asked.weather(), asked.ask()), List.of())
                .findings();
    }

    @Test
    void everyKeyThatAFindingNamesHasAFieldOnThePage() throws Exception {
        Set<String> named = named();
        assertThat(named)
                .hasSizeGreaterThan(30)
                .contains("safety.surroundings.floorGoodFor", "safety.surroundings.clearance", "safety.vent.rise")
                .allMatch(key -> key.startsWith("safety."));
        try (Browser page = Browser.start(folder)) {
            page.enter().at("night/example:saddlery").settled();
            page.press("All parts …");
            page.press("Safety answers");
            page.see(".sheet");
            for (String key : named)
                assertThat(page.has("#f-" + key.replace('.', '-'))).as(key).isTrue();
            for (String rig : Examples.RIGS) {
                page.at("safe/example:" + rig);
                page.until("answers", () -> page.has(".answer") && !page.has(".busy") && !page.has(".waiting"));
                assertThat(keys(page.text(".findings"))).as(rig).isEmpty();
            }
        }
    }

    @Test
    void whatAFloorCarriesIsSaidAtItsFinding() throws IOException {
        Path file = folder.resolve("boards.yaml");
        Files.writeString(file, new GuidedStart(Map.of("floor", "boards"), UnitSystem.SI).yaml());
        By answer = By.id("a-safety-surroundings-floorGoodFor");
        try (Browser page = Browser.start(folder)) {
            page.enter().at("safe/boards").says("The store stands on boards");
            assertThat(page.text(".findings")).contains("say what the floor carries, or stand it on the ground");
            page.driver.findElement(answer).sendKeys("15", org.openqa.selenium.Keys.ENTER);
            page.says("The unit is missing");
            page.driver.findElement(answer).sendKeys(" kPa", org.openqa.selenium.Keys.ENTER);
            page.until("answered", () -> !page.text(".findings").contains("The store stands on boards"));
            assertThat(Files.readString(file)).contains("15 kPa");
            assertThat(page.errors()).isEmpty();
        }
    }
}
