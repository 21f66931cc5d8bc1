package stokewell.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stokewell.weather.Site;

/**
 * What stands above and around a weather table: which format it is, where it was measured and when in the hour.
 *
 * @param utc whether the format keeps its times in UTC
 * @param sunCentre see {@link stokewell.weather.Hourly.Sun#centre()}
 * @param level false if the irradiance is on a tilted plane
 */
record WeatherPlace(Format format, Optional<Site> site, boolean utc, double sunCentre, boolean level) {

    enum Format {
        TMY3("TMY3"),
        NSRDB("NSRDB"),
        PVGIS("PVGIS"),
        PLAIN("plain CSV");

        final String words;

        Format(String words) {
            this.words = words;
        }
    }

    private static final int LINES_TO_JUDGE = 40;
    private static final Pattern FACT = Pattern.compile(
            "[#\\s]*(latitude|longitude|elevation|altitude|time ?zone|utc offset|irradiance time offset|slope)"
                    + "([^:=,;]{0,40})[:=,;]\\s*([-+]?\\d{1,5}(\\.\\d{0,9})?).*",
            Pattern.CASE_INSENSITIVE);

    static WeatherPlace of(List<String> lines, WeatherNotes notes) {
        String first = line(lines, 0);
        String second = line(lines, 1).toLowerCase(Locale.ROOT);
        if (second.startsWith("date (mm/dd/yyyy),time (hh:mm)")) {
            return new WeatherPlace(Format.TMY3, tmy3Site(first, notes), false, -1800, true);
        }
        if (first.toLowerCase(Locale.ROOT).contains("latitude")
                && line(lines, 2).startsWith("Year,Month,Day")) {
            return nsrdb(first, line(lines, 1), notes);
        }
        if (first.matches("\"?\\w*\"?,?Year,Month,Day,Hour,Minute,.*") && first.contains("GHI")) {
            notes.add(0, "the file does not say where it is; times are taken as local standard time");
            return new WeatherPlace(Format.NSRDB, Optional.empty(), false, 0, true);
        }
        return facts(lines, notes);
    }

    private static String line(List<String> lines, int index) {
        return index < lines.size() ? lines.get(index) : "";
    }

    private static Optional<Site> tmy3Site(String line, WeatherNotes notes) {
        String[] cells = line.split(",", -1);
        Optional<Site> site = cells.length < 7
                ? Optional.empty()
                : WeatherCsv.site(number(cells[4]), number(cells[5]), number(cells[3]), number(cells[6]));
        if (site.isEmpty()) {
            notes.add(1, "the station's place cannot be read");
        }
        return site;
    }

    private static WeatherPlace nsrdb(String names, String values, WeatherNotes notes) {
        List<String> name = List.of(names.split(",", -1));
        String[] value = values.split(",", -1);
        double zone = fact(name, value, "Time Zone");
        double local = fact(name, value, "Local Time Zone");
        Optional<Site> site = WeatherCsv.site(
                fact(name, value, "Latitude"),
                fact(name, value, "Longitude"),
                Double.isNaN(local) ? zone : local,
                fact(name, value, "Elevation"));
        if (site.isEmpty()) {
            notes.add(2, "the place cannot be read");
        }
        return new WeatherPlace(Format.NSRDB, site, zone == 0 && local != 0, 0, true);
    }

    private static double fact(List<String> names, String[] values, String name) {
        int at = names.indexOf(name);
        return at >= 0 && at < values.length ? number(values[at]) : Double.NaN;
    }

    /** Lines such as "Latitude (decimal degrees): 45.000" above the table, as PVGIS writes them and anyone may. */
    private static WeatherPlace facts(List<String> lines, WeatherNotes notes) {
        double latitude = Double.NaN;
        double longitude = Double.NaN;
        double altitude = 0;
        double zone = Double.NaN;
        double centre = 0;
        boolean level = true;
        boolean pvgis = false;
        for (String line : lines.subList(0, Math.min(LINES_TO_JUDGE, lines.size()))) {
            String lower = line.toLowerCase(Locale.ROOT);
            pvgis |= lower.startsWith("time(utc),") || lower.startsWith("time,g(i)") || lower.contains("pvgis");
            Matcher fact = FACT.matcher(line);
            if (!fact.matches()) {
                continue;
            }
            double value = number(fact.group(3));
            switch (fact.group(1).toLowerCase(Locale.ROOT).replace(" ", "")) {
                case "latitude" -> latitude = value;
                case "longitude" -> longitude = value;
                case "elevation", "altitude" -> altitude = value;
                case "timezone", "utcoffset" -> zone = value;
                case "irradiancetimeoffset" -> centre = Math.abs(value) <= 1 ? value * 3600 : 0;
                default -> level = value == 0;
            }
        }
        if (!level) {
            notes.add(0, "the irradiance is on a tilted plane and is not used");
        }
        boolean placed = !Double.isNaN(latitude) && !Double.isNaN(longitude);
        if (placed && Double.isNaN(zone)) {
            zone = Math.round(longitude / 15);
            notes.add(0, "local standard time is taken from the longitude: UTC%+d h".formatted((int) zone));
        }
        Optional<Site> site = placed ? WeatherCsv.site(latitude, longitude, zone, altitude) : Optional.empty();
        return new WeatherPlace(pvgis ? Format.PVGIS : Format.PLAIN, site, pvgis, centre, level);
    }

    private static double number(String text) {
        String trimmed = text.trim();
        return trimmed.matches("[-+]?\\d{1,6}(\\.\\d{0,9})?") ? Double.parseDouble(trimmed) : Double.NaN;
    }
}
