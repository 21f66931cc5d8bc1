package stokewell.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table that counts its time from a start, in a column such as {@code t_s}, {@code elapsed [min]} or {@code hours}: the
 * counts become moments, and the table is then read as any other.
 */
final class ReadingsElapsed {

    private static final String UNIT =
            "[ _]*[\\[(]?(s|sec|secs|seconds?|ms|min|mins|minutes?|h|hrs?|hours?)[\\])]?\\s*";

    private static final Pattern NAMED =
            Pattern.compile("(?i)\\s*(?:t|time|elapsed|elapsed[ _]time|uptime|since[ _]start|runtime)" + UNIT);

    /** A unit and no more; elsewhere than at the left such a heading may be a least value, or a height. */
    private static final Pattern BARE = Pattern.compile("(?i)\\s*" + UNIT);

    private static final Pattern COUNT = Pattern.compile("\\s*(\\d+(?:[.,]\\d+)?)\\s*");

    private final char separator;
    private final int column;
    private final double unit;
    private final Instant start;
    private final int first;

    private ReadingsElapsed(char separator, int column, double unit, Instant start, int first) {
        this.separator = separator;
        this.column = column;
        this.unit = unit;
        this.start = start;
        this.first = first;
    }

    /** Finds the column among the first lines. */
    static ReadingsElapsed find(String file, List<String> head, ReadingsAsk ask) {
        Instant start = ask.start()
                .orElseThrow()
                .atZone(ask.zone().orElse(ask.homeZone()))
                .toInstant();
        for (int i = 0; i < head.size(); i++) {
            for (char separator : ReadingsCells.SEPARATORS) {
                List<String> cells = ReadingsCells.of(head.get(i), separator);
                if (cells.size() < 2) continue;
                for (int c = 0; c < cells.size(); c++) {
                    Matcher m = (c == 0 && BARE.matcher(cells.get(c)).matches() ? BARE : NAMED).matcher(cells.get(c));
                    if (m.matches()) return new ReadingsElapsed(separator, c, seconds(m.group(1)), start, i);
                }
            }
        }
        throw new ReadingsFault(
                file,
                0,
                "it has no column that counts from the start",
                "Head it t_s, elapsed [min] or hours; leave --start away where the times say their date");
    }

    private static double seconds(String unit) {
        String u = unit.toLowerCase(java.util.Locale.ROOT);
        return u.equals("ms") ? 0.001 : u.startsWith("s") ? 1 : u.startsWith("m") ? 60 : 3600;
    }

    private String quoted(String cell) {
        return cell.indexOf(separator) < 0 && cell.indexOf('"') < 0 ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** All lines, with moments for counts; a cell that is no count stays, and is then told as one that cannot be read. */
    BufferedReader dated(BufferedReader lines) throws IOException {
        StringBuilder out = new StringBuilder();
        int n = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            out.append(n < first ? line : dated(line, n == first)).append('\n');
            n++;
        }
        return new BufferedReader(new StringReader(out.toString()));
    }

    private String dated(String line, boolean heading) {
        List<String> cells = ReadingsCells.of(line, separator);
        if (cells.size() <= column) return line;
        if (heading) cells.set(column, "time");
        Matcher m = COUNT.matcher(cells.get(column));
        if (m.matches()) {
            double count = Double.parseDouble(m.group(1).replace(',', '.'));
            cells.set(column, start.plusSeconds(Math.round(unit * count)).toString());
        }
        return String.join(
                Character.toString(separator), cells.stream().map(this::quoted).toList());
    }
}
