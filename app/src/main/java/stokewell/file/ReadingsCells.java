package stokewell.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/** Takes rows apart at a separator. */
final class ReadingsCells {

    static final char[] SEPARATORS = {',', ';', '\t', '|', ' '};

    private ReadingsCells() {}

    /** The cells of one line, without those that are empty at its end. */
    static List<String> of(String line, char separator) {
        if (line.isBlank()) return List.of();
        try {
            String text = separator == ' ' ? line.strip().replaceAll(" +", " ") : line;
            List<String> cells = text.indexOf('"') < 0 ? plain(text, separator) : quoted(text, separator);
            while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) cells.remove(cells.size() - 1);
            return cells;
        } catch (CsvParseException e) {
            return List.of();
        }
    }

    private static List<String> plain(String text, char separator) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int to = text.indexOf(separator); to >= 0; to = text.indexOf(separator, from)) {
            cells.add(text.substring(from, to));
            from = to + 1;
        }
        cells.add(text.substring(from));
        return cells;
    }

    private static List<String> quoted(String text, char separator) {
        return new ArrayList<>(CsvReader.builder()
                .fieldSeparator(separator)
                .allowUnclosedQuote(false)
                .ofSingleCsvRecord(text)
                .getFields());
    }

    /** All rows from here. */
    static CsvReader<CsvRecord> rows(Reader reader, char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .skipEmptyLines(false)
                .ofCsvRecord(separator == ' ' ? new SingleBlanks(reader) : reader);
    }

    static boolean blank(CsvRecord row) {
        for (int i = 0; i < row.getFieldCount(); i++) if (!row.getField(i).isBlank()) return false;
        return true;
    }

    static String cell(CsvRecord row, int column) {
        return column < row.getFieldCount() ? row.getField(column) : "";
    }

    /** Makes one blank of many, and none at the beginning of a line. */
    private static final class SingleBlanks extends FilterReader {
        private boolean swallow = true;

        SingleBlanks(Reader in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            while (true) {
                int c = in.read();
                if (c == ' ' && swallow) continue;
                swallow = c == ' ' || c == '\n' || c == '\r';
                return c;
            }
        }

        @Override
        public int read(char[] into, int from, int most) throws IOException {
            int n = 0;
            while (n < most) {
                int c = read();
                if (c < 0) return n == 0 ? -1 : n;
                into[from + n++] = (char) c;
            }
            return n;
        }
    }
}
