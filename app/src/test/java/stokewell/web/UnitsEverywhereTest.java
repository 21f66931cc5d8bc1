package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever chose US units reads no SI figure on any view, and the other way round. */
final class UnitsEverywhereTest {

    private static final Pattern SI =
            Pattern.compile("\\d ?(°C|C|K|kg|L|m|mm|cm|m²|m³|kWh|kW|bar|kPa|Pa|L/min|kg/h|m/s)(?![\\w·/²³])");
    private static final Pattern US = Pattern.compile(
            "(?<!EN [\\d]{3,6}-)\\d ?(°F|F|lb|gal|ft|in|ft²|kBtu|Btu/h|psi|psf|gpm|cfm|in wc)(?![\\w·/²³])");

    /** The button that changes them, and the pressure at which every blower door is read. */
    private static final List<String> MAY = List.of("°F · ft", "°C · m", "at 50 Pa");

    @TempDir
    static Path folder;

    private static Browser page;

    @BeforeAll
    static void open() {
        page = Browser.start(folder).enter();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    private static void come(String view) {
        page.turnTo(view + "/example:saddlery");
        page.see("nav a[aria-current][href='#" + view + "']");
        page.until("rest", () -> !page.has(".busy") && !page.has(".waiting"));
    }

    private static List<String> strays(Pattern stray, String place) {
        String said = (String) page.js("""
                const shown = document.querySelector('.page').cloneNode(true);
                shown.querySelectorAll('pre.file, .card, .head-row h1').forEach(n => n.remove());
                document.body.append(shown);
                const words = shown.innerText + '\\n' + [...shown.querySelectorAll('[aria-label], [aria-valuetext]')]
                  .map(n => (n.getAttribute('aria-label') || '') + ' ' + (n.getAttribute('aria-valuetext') || '')).join('\\n');
                shown.remove();
                return words;""");
        for (String may : MAY) said = said.replace(may, "");
        List<String> found = new ArrayList<>();
        for (String line : said.split("\n")) {
            Matcher m = stray.matcher(line);
            if (m.find()) found.add(place + ": " + line.strip() + "  <" + m.group() + ">");
        }
        return found;
    }

    private static List<String> all(Pattern stray) {
        List<String> found = new ArrayList<>();
        come("night");
        found.addAll(strays(stray, "night"));
        for (Object part : (List<?>)
                page.js(
                        "return [...document.querySelectorAll('.drawing [data-part]')].map(n => n.getAttribute('data-part'))")) {
            page.touch((String) part);
            page.until("the sheet of " + part, () -> page.has(".drawing [data-part='" + part + "'].chosen"));
            found.addAll(strays(stray, "night, " + part));
        }
        come("safe");
        page.press("Run the drills");
        page.until("the drills", () -> page.has(".drills li") && !page.has(".progress"));
        found.addAll(strays(stray, "safe"));
        for (String view : List.of("help", "winter", "side", "share")) {
            come(view);
            found.addAll(strays(stray, view));
        }
        return found.stream().distinct().toList();
    }

    @Test
    void everyFigureIsInTheUnitsThatWereChosen() {
        come("night");
        assertThat(all(US)).as("US figures on the SI page").isEmpty();
        come("night");
        page.press("Units: SI. Change to US");
        page.settled();
        assertThat(page.text(".big")).contains("°F");
        assertThat(all(SI)).as("SI figures on the US page").isEmpty();
        page.js("localStorage.clear()");
    }
}
