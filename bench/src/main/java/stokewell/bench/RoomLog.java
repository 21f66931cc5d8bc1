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
 * @param heat    of what heats the room, W
 * @param gains   electricity that becomes heat in the room besides, W
 * @param outdoor K
 * @param sun     global on the horizontal, W/m2
 * @param wind    m/s
 * @param slab    K; empty where no sensor is in a slab
 */
record RoomLog(
        LocalDateTime start,
        double[] room,
        double[] heat,
        double[] gains,
        double[] outdoor,
        double[] sun,
        double[] wind,
        double[] slab) {

    private static final double ZERO = 273.15;

    /** One row as it was written down, in the order above; NaN where nothing was. */
    private record Row(LocalDateTime at, double... read) {}

    int hours() {
        return room.length;
    }

    /** The same from one hour to another. */
    RoomLog part(int from, int until) {
        return new RoomLog(
                start.plusHours(from),
                cut(room, from, until),
                cut(heat, from, until),
                cut(gains, from, until),
                cut(outdoor, from, until),
                cut(sun, from, until),
                cut(wind, from, until),
                hasSlab() ? cut(slab, from, until) : slab);
    }

    private static double[] cut(double[] v, int from, int until) {
        return Arrays.copyOfRange(v, from, until);
    }

    /** Whether there is a sensor in a slab: the heating is then pipes in it. */
    boolean hasSlab() {
        return slab.length > 0;
    }

    /** All heat of an hour, wherever it goes, W. */
    double warmth(int hour) {
        return heat[hour] + gains[hour];
    }

    /** Test house with electric heaters, switched at random: mean of rooms 1 to 7. */
    static RoomLog flexhouse(Path folder) throws IOException {
        DateTimeFormatter f = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");
        return read(folder.resolve("a81_ds3_flexhouse_prbs1_5min.csv"), ",", c -> {
            double mean = 0;
            for (int i = 2; i <= 8; i++) mean += number(c[i]) / 7;
            return new Row(
                    LocalDateTime.parse(c[0], f),
                    ZERO + mean,
                    number(c[25]),
                    0,
                    ZERO + number(c[27]),
                    1000 * Math.max(0, number(c[26])),
                    number(c[29]));
        });
    }

    /**
     * Library with a radiant slab; dates change their order on day 13. Its heat was not measured: in every row it is four times
     * the electricity of the heat pumps, to the last digit.
     */
    static RoomLog slabHall(Path folder) throws IOException {
        DateTimeFormatter dots = DateTimeFormatter.ofPattern("MM.dd.yyyy HH:mm");
        DateTimeFormatter slashes = DateTimeFormatter.ofPattern("M/d/yyyy H:mm");
        return read(
                folder.resolve("a81_ds4_library_slab_15min.csv"),
                ",",
                c -> new Row(
                        LocalDateTime.parse(c[0], c[0].contains("/") ? slashes : dots),
                        ZERO + number(c[10]),
                        1000 * number(c[7]),
                        1000 * number(c[12]),
                        ZERO + number(c[8]),
                        number(c[14]),
                        2,
                        ZERO + number(c[6])));
    }

    /** Solar house without heat: mean of its two rooms. */
    static RoomLog solarhouse(Path folder) throws IOException {
        DateTimeFormatter f = DateTimeFormatter.ofPattern("dd/MM/yyyy HH:mm");
        return read(
                folder.resolve("uci_sml2010_part1_15min.txt"),
                " ",
                c -> new Row(
                        LocalDateTime.parse(c[0] + " " + c[1], f),
                        ZERO + 0.5 * (number(c[2]) + number(c[3])),
                        0,
                        0,
                        ZERO + number(c[21]),
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
        int columns = rows.get(0).read().length;
        double[][] mean = new double[columns][hours];
        int[] count = new int[hours];
        for (Row r : rows) {
            int h = (int) Math.floorDiv(Duration.between(first, r.at()).toSeconds(), 3600);
            if (h < 0 || h >= hours || Arrays.stream(r.read()).anyMatch(Double::isNaN)) continue;
            for (int k = 0; k < columns; k++) mean[k][h] += r.read()[k];
            count[h]++;
        }
        for (int k = 0; k < columns; k++) {
            for (int h = 0; h < hours; h++) {
                // an hour without a reading holds the one before: there are none in these files but at most a few
                mean[k][h] = count[h] > 0 || h == 0 ? mean[k][h] / count[h] : mean[k][h - 1];
            }
        }
        double[] slab = columns > 6 ? mean[6] : new double[0];
        return new RoomLog(first, mean[0], mean[1], mean[2], mean[3], mean[4], mean[5], slab);
    }
}
