package stokewell.show;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.time.LocalDateTime;
import java.util.List;
import stokewell.run.Trace;

/** A trace as a table, SI: temperatures in K, flows in kg/s, powers in W, as the run holds them. */
public final class TraceCsv {

    private TraceCsv() {}

    /** @param start moment of the run's t = 0 */
    public static void write(Trace trace, LocalDateTime start, Writer out) throws IOException {
        CsvWriter csv = CsvWriter.builder().build(out);
        List<String> names = trace.names();
        String[] row = new String[names.size() + 1];
        row[0] = "time";
        for (int c = 0; c < names.size(); c++) row[c + 1] = names.get(c);
        csv.writeRecord(row);
        for (int i = 0; i < trace.size(); i++) {
            row[0] = start.plusSeconds(Math.round(trace.time(i))).toString();
            for (int c = 0; c < names.size(); c++) {
                double value = trace.value(names.get(c), i);
                row[c + 1] = Double.isFinite(value) ? Float.toString((float) value) : "";
            }
            csv.writeRecord(row);
        }
        csv.flush();
    }
}
