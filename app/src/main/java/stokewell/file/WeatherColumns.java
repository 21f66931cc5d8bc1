package stokewell.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What each column of a table is, told from its heading. */
final class WeatherColumns {

    private static final Pattern BRACKETED = Pattern.compile("([^\\[(]*)[\\[(]([^\\])]*)[\\])]\\s*");
    private static final Pattern SUFFIXED =
            Pattern.compile("(.+?)_(c|f|k|degc|degf|m_s|ms|km_h|kmh|mph|kt|kn|w_m2|wm2|kw_m2|pct|1)");
    /** Headings whose last letter is the unit, or that are a unit, as the ASOS archive of Iowa writes them. */
    private static final Map<String, String> RENAMED = Map.of(
            "tmpf", "temp_f",
            "tmpc", "temp_c",
            "dwpf", "dewpoint_f",
            "dwpc", "dewpoint_c",
            "relh", "rh_pct",
            "sknt", "wind_kt");

    /** A column that holds a quantity. */
    record Column(int index, String heading, WeatherUnit unit, boolean unitGiven) {}

    final Map<WeatherQuantity, Column> quantities = new EnumMap<>(WeatherQuantity.class);
    final List<String> odd = new ArrayList<>();
    private final String[] plain;
    private final List<String> headings;
    private final boolean level;

    /**
     * @param units of a row of units below the headings, or empty
     * @param level whether a PVGIS series is for a level plane; the irradiance of another says nothing about ours
     */
    WeatherColumns(List<String> headings, List<String> units, boolean level) {
        this.headings = headings;
        this.level = level;
        plain = new String[headings.size()];
        for (int i = 0; i < plain.length; i++) {
            read(i, headings.get(i).trim(), i < units.size() ? units.get(i).trim() : "");
        }
    }

    private void read(int index, String heading, String unitBelow) {
        String lower = heading.toLowerCase(Locale.ROOT);
        String name = RENAMED.getOrDefault(lower, lower);
        String unit = unitBelow;
        Matcher bracketed = BRACKETED.matcher(name);
        Matcher suffixed = SUFFIXED.matcher(name);
        if (level && (name.equals("g(i)") || name.equals("gd(i)"))) {
            name = name.equals("g(i)") ? "gh" : "gdh";
        } else if (WeatherQuantity.named(name).isEmpty() && bracketed.matches()) {
            name = bracketed.group(1);
            unit = bracketed.group(2);
        } else if (WeatherQuantity.named(name).isEmpty() && suffixed.matches()) {
            name = suffixed.group(1);
            unit = suffixed.group(2);
        }
        plain[index] = WeatherQuantity.plain(name);
        Optional<WeatherQuantity> quantity = WeatherQuantity.named(name);
        if (quantity.isEmpty()) {
            return;
        }
        if (quantities.containsKey(quantity.get())) {
            odd.add("column \"" + heading + "\" is left out: " + quantity.get().label + " is already in column \""
                    + quantities.get(quantity.get()).heading + "\"");
            return;
        }
        Optional<WeatherUnit> known = WeatherUnit.named(unit);
        if (!unit.isBlank() && (known.isEmpty() || !quantity.get().units.contains(known.get()))) {
            odd.add("column \"" + heading + "\" is left out: " + unit + " is not a unit known for "
                    + quantity.get().label);
            return;
        }
        quantities.put(
                quantity.get(), new Column(index, heading, known.orElse(quantity.get().usual), known.isPresent()));
    }

    /** Column with one of these plain names, -1 if there is none. */
    int named(String... names) {
        for (String name : names) {
            for (int i = 0; i < plain.length; i++) {
                if (plain[i].equals(name)) {
                    return i;
                }
            }
        }
        return -1;
    }

    /** Column that holds date and time together, or a date alone; -1 if there is none. */
    int date() {
        int both = named("datetime", "timestamp", "datetimelst", "datetimeutc", "valid", "localtime", "validutc");
        return both >= 0 ? both : firstStarting("date", "time", "valid", "datum");
    }

    /** Column of a clock time beside a date. */
    int clock(int besides) {
        for (int i = 0; i < plain.length; i++) {
            if (i != besides && (plain[i].startsWith("time") || plain[i].equals("hour") || plain[i].equals("klo"))) {
                return i;
            }
        }
        return -1;
    }

    private int firstStarting(String... starts) {
        for (String start : starts) {
            for (int i = 0; i < plain.length; i++) {
                if (plain[i].startsWith(start) && !plain[i].startsWith("timezone")) {
                    return i;
                }
            }
        }
        return -1;
    }

    boolean datesInParts() {
        return named("year") >= 0 && named("month", "m") >= 0 && named("day", "d") >= 0;
    }

    boolean saysUtc(int column) {
        String lower = column < 0 ? "" : headings.get(column).toLowerCase(Locale.ROOT);
        return lower.contains("utc") || lower.contains("gmt");
    }

    /** The order of a date that its heading states, as "Date (MM/DD/YYYY)". */
    Optional<WeatherStamp.Order> statedOrder(int column) {
        String upper = headings.get(column).toUpperCase(Locale.ROOT);
        if (upper.contains("MM/DD")) {
            return Optional.of(WeatherStamp.Order.MONTH_DAY_YEAR);
        }
        return upper.contains("DD/MM") || upper.contains("DD.MM")
                ? Optional.of(WeatherStamp.Order.DAY_MONTH_YEAR)
                : Optional.empty();
    }

    boolean usable() {
        return quantities.containsKey(WeatherQuantity.TEMPERATURE) && (date() >= 0 || datesInParts());
    }
}
