package stokewell.show;

import static stokewell.file.Units.BTU;
import static stokewell.file.Units.FOOT;
import static stokewell.file.Units.GALLON;
import static stokewell.file.Units.INCH;
import static stokewell.file.Units.POUND;
import static stokewell.file.Units.PSI;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Finding;
import stokewell.file.UnitSystem;
import stokewell.sheet.SheetFacts;

/**
 * Sentences of check and drills in the reader's units. The engine words them in SI and, where a figure is a rule of the trade,
 * with the US figure behind it in brackets. Here one of the two is kept; where there is none, the number is turned into the
 * other's with as many digits as it had. A difference of temperatures never gets the offset of the scale; watts, watt hours
 * and milligrams are the same everywhere.
 */
public final class Spoken {

    /** One unit into another: {@code to = from * factor + offset}. */
    private record Turn(String to, double factor, double offset) {}

    /** kBtu in a kWh. */
    private static final double KBTU = 3600 / BTU;

    private static final Map<String, Turn> TO_US = new LinkedHashMap<>();
    private static final Map<String, Turn> TO_SI = new LinkedHashMap<>();

    private static void pair(String si, String us, double factor) {
        TO_US.put(si, new Turn(us, factor, 0));
    }

    static {
        TO_US.put("°C", new Turn("°F", 1.8, 32));
        pair("kW/m²", "kBtu/h·ft²", KBTU * FOOT * FOOT);
        pair("W/m·K", "Btu/h·ft·°F", KBTU / 1.8 * FOOT);
        pair("kW/m", "kBtu/h·ft", KBTU * FOOT);
        pair("kWh", "kBtu", KBTU);
        pair("kW", "kBtu/h", KBTU);
        pair("bar/K", "psi/°F", 1e5 / PSI / 1.8);
        pair("K", "°F", 1.8);
        pair("bar", "psi", 1e5 / PSI);
        pair("kPa", "psi", 1e3 / PSI);
        pair("MPa", "ksi", 1e3 / PSI);
        pair("Pa", "in wc", 1 / (INCH * 9806.65));
        pair("L/min", "gpm", 1e-3 / GALLON);
        pair("L/h", "gal/h", 1e-3 / GALLON);
        pair("L", "gal", 1e-3 / GALLON);
        pair("kg/h", "lb/h", 1 / POUND);
        pair("kg", "lb", 1 / POUND);
        pair("t/m²", "lb/ft²", 1000 / POUND * FOOT * FOOT);
        pair("kN", "lb of force", 1000 / (POUND * 9.80665));
        pair("m³/h", "cfm", 1 / (60 * FOOT * FOOT * FOOT));
        pair("m³", "ft³", 1 / (FOOT * FOOT * FOOT));
        pair("m²", "ft²", 1 / (FOOT * FOOT));
        pair("cm²", "in²", 1e-4 / (INCH * INCH));
        pair("m/s", "ft/s", 1 / FOOT);
        pair("mm", "in", 1e-3 / INCH);
        pair("cm", "in", 1e-2 / INCH);
        pair("m", "ft", 1 / FOOT);
        TO_SI.put("°F", new Turn("°C", 1 / 1.8, -32 / 1.8));
        TO_SI.put("psi", new Turn("bar", PSI / 1e5, 0));
        TO_SI.put("psf", new Turn("kPa", POUND * 9.80665 / (FOOT * FOOT) / 1e3, 0));
        TO_SI.put("US gallons", new Turn("L", 1e3 * GALLON, 0));
        TO_SI.put("kBtu/h", new Turn("kW", 1 / KBTU, 0));
    }

    private static final String NUMBER = "[-−]?\\d+(?:\\.\\d+)?";
    /** As on a tape. */
    private static final String TAPE = "(?:" + NUMBER + "|\\d+/\\d+|\\d+ \\d+/\\d+)";
    /** US units that stand only in brackets behind an SI one, and there say how it reads. */
    private static final String US = "(?:°F|US gallons|gal|psi|psf|kBtu/h|kBtu|Btu/h|in²|in|ft²|ft|lb|F)";

    private static final Pattern BOTH = Pattern.compile("(" + NUMBER + "(?: to " + NUMBER + ")? (?:" + any(TO_US)
            + "))(?![\\w·/²³]) \\((" + TAPE + "(?: to " + TAPE + ")? " + US + ")\\)");
    private static final Pattern BACKWARDS =
            Pattern.compile("(" + NUMBER + " (?:" + any(TO_SI) + ")) \\((" + NUMBER + " (?:" + any(TO_US) + "))\\)");
    private static final Pattern SI_ONE = one(TO_US);
    private static final Pattern US_ONE = one(TO_SI);

    private Spoken() {}

    private static String any(Map<String, Turn> units) {
        List<String> names = new ArrayList<>(units.keySet());
        names.sort((a, b) -> b.length() - a.length());
        return String.join("|", names.stream().map(Pattern::quote).toList());
    }

    private static Pattern one(Map<String, Turn> units) {
        return Pattern.compile(
                "(?<![\\w.])(" + NUMBER + ")(?:( to | and | or )(" + NUMBER + "))? (" + any(units) + ")(?![\\w·/²³])");
    }

    /** A sentence in these units. */
    public static String in(String text, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        String one = BOTH.matcher(text).replaceAll(us ? "$2" : "$1");
        one = BACKWARDS.matcher(one).replaceAll(us ? "$1" : "$2");
        return turned(one, us ? SI_ONE : US_ONE, us ? TO_US : TO_SI);
    }

    private static String turned(String text, Pattern pattern, Map<String, Turn> units) {
        Matcher m = pattern.matcher(text);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            Turn turn = units.get(m.group(4));
            String range = m.group(2) == null ? "" : m.group(2) + number(m.group(3), turn);
            m.appendReplacement(out, Matcher.quoteReplacement(number(m.group(1), turn) + range + " " + turn.to()));
        }
        return m.appendTail(out).toString();
    }

    /** With as many digits as it had, two at the least and three at the most; a temperature to the degree, or as it was. */
    private static String number(String text, Turn turn) {
        String plain = text.replace('−', '-');
        double value = Double.parseDouble(plain) * turn.factor() + turn.offset();
        int point = plain.indexOf('.');
        if (turn.offset() != 0) return fixed(value, point < 0 ? 0 : plain.length() - point - 1);
        if (value == 0) return "0";
        String digits = plain.replace("-", "").replace(".", "").replaceFirst("^0+", "");
        if (point < 0) digits = digits.replaceFirst("0+$", "");
        int keep = Math.max(2, Math.min(3, digits.length()));
        int decimals = keep - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
        if (decimals > 0) {
            String told = fixed(value, Math.min(3, decimals));
            return told.contains(".") ? told.replaceFirst("\\.?0+$", "") : told;
        }
        double scale = Math.pow(10, -decimals);
        return fixed(Math.round(value / scale) * scale, 0);
    }

    private static String fixed(double value, int decimals) {
        String told = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return told.matches("-0(\\.0*)?") ? told.substring(1) : told;
    }

    /** A finding with its texts in these units. */
    public static Finding in(Finding f, UnitSystem units) {
        return new Finding(
                f.id(),
                f.level(),
                in(f.what(), units),
                in(f.why(), units),
                in(f.remedy(), units),
                in(f.basis(), units));
    }

    /** All findings with their texts in these units; null for null. */
    public static Check in(Check check, UnitSystem units) {
        if (check == null) return null;
        return new Check(check.findings().stream().map(f -> in(f, units)).toList(), check.whole());
    }

    /** All that a sheet tells, in these units. */
    public static SheetFacts in(SheetFacts facts, UnitSystem units) {
        return new SheetFacts(facts.rig(), in(facts.drills(), units), in(facts.check(), units), facts.firstFire());
    }

    /** The drills with their sentences in these units. */
    public static Drills.Outcome in(Drills.Outcome outcome, UnitSystem units) {
        List<Drill> told = outcome.drills().stream()
                .map(d -> d.told(in(d.sentence(), units)))
                .toList();
        return new Drills.Outcome(outcome.day(), told);
    }
}
