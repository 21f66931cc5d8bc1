package stokewell.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * ISD-Lite of NOAA: twelve numbers in fixed columns, UTC. Source: ISD-Lite format documentation, NCDC, 2006. Fields
 * are told apart by blanks; each is at least one wide in every file that NOAA makes.
 */
final class WeatherIsdLite {

    private static final Pattern ROW = Pattern.compile("\\d{4} +\\d{1,2} +\\d{1,2} +\\d{1,2}( +-?\\d{1,6}){8}\\s*");
    private static final int MISSING = -9999;
    private static final int LINES_TO_JUDGE = 5;

    private WeatherIsdLite() {}

    static boolean looksLike(List<String> lines) {
        return lines.stream()
                .limit(LINES_TO_JUDGE)
                .anyMatch(line -> ROW.matcher(line).matches());
    }

    static WeatherTable read(List<String> lines, WeatherNotes notes) {
        List<WeatherTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int line = i + 1;
            String text = lines.get(i);
            if (text.isBlank()) {
                continue;
            }
            if (!ROW.matcher(text).matches()) {
                notes.add("rows that are not twelve numbers, left out", line, "not twelve numbers; left out");
                continue;
            }
            int[] f = Arrays.stream(text.trim().split(" +"))
                    .mapToInt(Integer::parseInt)
                    .toArray();
            var stamp = WeatherStamp.of(f[0], f[1], f[2], f[3] * 3600, Optional.empty());
            if (stamp.isEmpty()) {
                notes.add("rows with an impossible time, left out", line, "no such date or hour; left out");
                continue;
            }
            double[] values = new double[WeatherQuantity.values().length];
            Arrays.fill(values, Double.NaN);
            put(values, WeatherQuantity.TEMPERATURE, f[4], WeatherUnit.CELSIUS);
            put(values, WeatherQuantity.DEW_POINT, f[5], WeatherUnit.CELSIUS);
            put(values, WeatherQuantity.WIND, f[8], WeatherUnit.METRES_A_SECOND);
            rows.add(new WeatherTable.Row(line, stamp.get(), values));
        }
        return new WeatherTable(
                "ISD-Lite",
                Optional.empty(),
                true,
                0,
                true,
                EnumSet.of(WeatherQuantity.TEMPERATURE, WeatherQuantity.DEW_POINT, WeatherQuantity.WIND),
                rows);
    }

    private static void put(double[] values, WeatherQuantity quantity, int tenths, WeatherUnit unit) {
        if (tenths != MISSING) {
            values[quantity.ordinal()] = unit.toSi(tenths / 10.0);
        }
    }
}
