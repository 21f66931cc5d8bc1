package stokewell.file;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a heading says of its column: {@code Temp (°F)}, {@code room1_c}, {@code T_ext [C]}, {@code Temp, °F (S/N: 12)}.
 *
 * @param name the sensor's, without its unit
 * @param unit if one is named
 */
record ReadingsHeading(String name, Optional<SensorUnit> unit) {

    private static final Pattern BRACKET = Pattern.compile("[\\[(]([^\\[\\]()]*)[\\])]");
    private static final Pattern DEGREE =
            Pattern.compile("(?:°|º|\u02da|\\bdeg\\.?\\s?)\\s?([FC])\\b|([℃℉])", Pattern.CASE_INSENSITIVE);
    private static final Pattern TAIL =
            Pattern.compile("(.*[^\\s_,/-])\\s*(?:,\\s*|\\s/\\s|/|\\s|_)\\s*([^\\s_,]{1,8})$");
    private static final Pattern WARM = Pattern.compile(
            "(?i:.*(temp|therm|°|rtd|pt100|pt1000|ntc|ds18).*)|[Tt]|[Tt]\\d{1,3}|[Tt][ _-].*|.*[ _-][Tt]"
                    + "|T(?!ime|imer)[a-z]{0,3}([A-Z_0-9].*)?");
    /** Where a shop has its thermometers: a column of such a name without a unit is asked for its unit. */
    private static final Pattern PLACE =
            Pattern.compile("(?i)(.*[^a-z])?(room|indoors?|inside|outdoors?|outside|store|tank)([^a-z].*)?");
    /** Units whose slash became an underscore. */
    private static final Pattern JOINED =
            Pattern.compile("(?i)(.*[^_])_+(km_h|m_s|w_m2|kw_m2|l_min|l_s|l_h|m3_h|m3_s|btu_h)");

    private static final Pattern OTHER = Pattern.compile(
            "(?i).*(co2|hum|rh|lux|light|lumin|wind|rain|volt|batt|press|power|flow|count|day|dew ?point spread|rssi|signal"
                    + "|status|state of|valve|setp|open|energy|kwh).*");
    private static final Pattern DAMP = Pattern.compile("(?i).*(hum|\\brh\\b|rh[ _].*|.*[ _]rh|feuchte).*|rh");

    static ReadingsHeading of(String heading, String unitBelow) {
        String text = heading.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        Optional<SensorUnit> below = SensorUnit.named(unitBelow.replaceAll("[\\[\\]()]", ""));
        Matcher brackets = BRACKET.matcher(text);
        while (brackets.find()) {
            Optional<SensorUnit> unit = SensorUnit.named(brackets.group(1));
            if (unit.isPresent()) {
                String rest = text.substring(0, brackets.start()) + text.substring(brackets.end());
                return named(rest, unit.get());
            }
        }
        Matcher degree = DEGREE.matcher(text);
        if (degree.find()) {
            String letter =
                    degree.group(1) != null ? degree.group(1) : degree.group(2).equals("℃") ? "C" : "F";
            String rest = text.substring(0, degree.start()).replaceAll("[\\s,/(\\[]+$", "");
            return named(rest.isEmpty() ? text : rest, SensorUnit.named(letter).orElseThrow());
        }
        Matcher joined = JOINED.matcher(text);
        if (joined.matches()) {
            Optional<SensorUnit> unit = SensorUnit.named(joined.group(2).replace('_', '/'));
            if (unit.isPresent()) return named(joined.group(1), unit.get());
        }
        Matcher tail = TAIL.matcher(text);
        if (tail.matches()) {
            Optional<SensorUnit> unit = SensorUnit.named(tail.group(2));
            boolean sure = unit.isPresent()
                    && !(tail.group(2).equals("g") || tail.group(2).equalsIgnoreCase("j"));
            if (sure) return named(tail.group(1), unit.get());
        }
        return below.isPresent() ? named(text, below.get()) : new ReadingsHeading(clean(text), Optional.empty());
    }

    private static ReadingsHeading named(String rest, SensorUnit unit) {
        String name = clean(rest);
        boolean damp = unit.kind() == SensorKind.SHARE && DAMP.matcher(name).matches();
        return new ReadingsHeading(name, Optional.of(damp ? unit.as(SensorKind.HUMIDITY) : unit));
    }

    private static String clean(String text) {
        return text.replaceAll("\\s+", " ").replaceAll("[\\s,;:/_-]+$", "").strip();
    }

    /** Whether the name is one of a temperature. */
    boolean warm() {
        return (WARM.matcher(name).matches() || PLACE.matcher(name).matches())
                && !OTHER.matcher(name).matches();
    }

    /** Whether the name is one of something else. */
    boolean other() {
        return OTHER.matcher(name).matches();
    }

    /** The time zone that a heading of times names, such as {@code GMT-05:00}. */
    static Optional<java.time.ZoneOffset> zone(String heading) {
        Matcher m = Pattern.compile("(?i)(?:^|[^a-z])(?:utc|gmt)\\s*([+-]\\d{1,2})?(?::?(\\d{2}))?(?:[^a-z].*|$)")
                .matcher(heading.replace('_', ' '));
        if (!m.find()) return Optional.empty();
        if (m.group(1) == null) return Optional.of(java.time.ZoneOffset.UTC);
        int hours = Integer.parseInt(m.group(1));
        int minutes = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
        if (Math.abs(hours) > 14 || minutes > 59) return Optional.empty();
        boolean minus = m.group(1).startsWith("-");
        return Optional.of(java.time.ZoneOffset.ofTotalSeconds(3600 * hours + (minus ? -60 : 60) * minutes));
    }
}
