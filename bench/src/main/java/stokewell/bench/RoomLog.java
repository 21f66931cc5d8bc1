package stokewell.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Hours of a measured room: the means over each hour from the first full one on.
 *
 * @param room    K
 * @param heat    W
 * @param outdoor K
 * @param sun     global on the horizontal, W/m2
 * @param wind    m/s
 */
record RoomLog(LocalDateTime start, double[] room, double[] heat, double[] outdoor, double[] sun, double[] wind) {

    /** One row as it was written down; NaN where nothing was. */
    private record Row(LocalDateTime at, double room, double heat, double outdoor, double sun, double wind) {}

    int hours() {
        return room.length;
    }

    /** The same from one hour to another. */
    RoomLog part(int from, int until) {
        return new RoomLog(
                start.plusHours(from),
                cut(room, from, until),
                cut(heat, from, until),
                cut(outdoor, from, until),
                cut(sun, from, until),
                cut(wind, from, until));
    }

    private static double[] cut(double[] v, int from, int until) {
        return java.util.Arrays.copyOfRange(v, from, until);
    }

    /** Test house with electric heaters, switched at random: mean of rooms 1 to 7. */
    static RoomLog flexhouse(Path folder) throws IOException {
        DateTimeFormatter f = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");
        return read(folder.resolve("a81_ds3_flexhouse_prbs1_5min.csv"), ",", c -> {
            double mean = 0;
            for (int i = 2; i <= 8; i++) mean += number(c[i]) / 7;
            return new Row(
                    LocalDateTime.parse(c[0], f),
                    273.15 + mean,
                    number(c[25]),
                    273.15 + number(c[27]),
                    1000 * Math.max(0, number(c[26])),
                    number(c[29]));
        });
    }

    /** Library with a radiant slab; dates change their order on day 13. */
    static RoomLog slabHall(Path folder) throws IOException {
        DateTimeFormatter dots = DateTimeFormatter.ofPattern("MM.dd.yyyy HH:mm");
        DateTimeFormatter slashes = DateTimeFormatter.ofPattern("M/d/yyyy H:mm");
        return read(
                folder.resolve("a81_ds4_library_slab_15min.csv"),
                ",",
                c -> new Row(
                        LocalDateTime.parse(c[0], c[0].contains("/") ? slashes : dots),
                        273.15 + number(c[10]),
                        1000 * (number(c[7]) + number(c[12])),
                        273.15 + number(c[8]),
                        number(c[14]),
                        2));
    }

    /** Solar house without heat: mean of its two rooms. */
    static RoomLog solarhouse(Path folder) throws IOException {
        DateTimeFormatter f = DateTimeFormatter.ofPattern("dd/MM/yyyy HH:mm");
        return read(
                folder.resolve("uci_sml2010_part1_15min.txt"),
                " ",
                c -> new Row(
                        LocalDateTime.parse(c[0] + " " + c[1], f),
                        273.15 + 0.5 * (number(c[2]) + number(c[3])),
                        0,
                        273.15 + number(c[21]),
                        Math.max(0, number(c[17])),
                        number(c[13])));
    }

    private static double number(String cell) {
        return cell.isBlank() ? Double.NaN : Double.parseDouble(cell);
    }

    private static RoomLog read(Path file, String separator, Function<String[], Row> of) throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : Files.readAllLines(file).stream().skip(1).toList()) {
            if (!line.isBlank()) rows.add(of.apply(line.strip().split(separator, -1)));
        }
        LocalDateTime first = rows.get(0).at().withMinute(0).withSecond(0).plusHours(1);
        int hours =
                (int) Duration.between(first, rows.get(rows.size() - 1).at()).toHours();
        double[][] sum = new double[5][hours];
        int[] count = new int[hours];
        for (Row r : rows) {
            int h = (int) Math.floorDiv(Duration.between(first, r.at()).toSeconds(), 3600);
            double[] all = {r.room(), r.heat(), r.outdoor(), r.sun(), r.wind()};
            if (h < 0 || h >= hours || Arrays.stream(all).anyMatch(Double::isNaN)) continue;
            for (int k = 0; k < 5; k++) sum[k][h] += all[k];
            count[h]++;
        }
        for (int k = 0; k < 5; k++) {
            for (int h = 0; h < hours; h++) {
                // an hour without a reading holds the one before: there are none in these files but at most a few
                sum[k][h] = count[h] > 0 || h == 0 ? sum[k][h] / count[h] : sum[k][h - 1];
            }
        }
        return new RoomLog(first, sum[0], sum[1], sum[2], sum[3], sum[4]);
    }
}
