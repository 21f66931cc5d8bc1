package stokewell.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import stokewell.file.UnitSystem;

/** The morning that is asked about, and whether its numbers are wanted as a table. */
class TableChoice {

    @Option(
            names = "--hour",
            paramLabel = "CLOCK",
            defaultValue = "7:30",
            description = "The hour of the morning that counts. Default: ${DEFAULT-VALUE}.")
    String hour;

    @Option(
            names = "--limit",
            paramLabel = "TEMPERATURE",
            defaultValue = "10 C",
            description = "The room temperature that hours are counted against. Default: ${DEFAULT-VALUE}.")
    String limit;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--json", description = "Write JSON and nothing else; always in SI.")
    boolean json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Write the numbers as a table, too; with - for FILE to standard output and nothing else.")
    Path csv;

    /** Complains before a run where a file cannot be written. */
    void check() {
        if (!csvAlone()) OutFile.check("--csv", csv);
        else if (json) throw Complaint.usage("--csv - and --json both want standard output.", "Name a file for --csv.");
    }

    /** Whether the table is all that is wanted. */
    boolean csvAlone() {
        return csv != null && csv.toString().equals("-");
    }

    /** Writes what a table shall hold. */
    interface Table {
        void to(Writer out) throws IOException;
    }

    /** Writes the table where it was asked for. */
    void writeTable(PrintWriter standard, Table table) throws IOException {
        if (csvAlone()) {
            table.to(standard);
            return;
        }
        OutFile.write(csv, to -> {
            OutputStreamWriter text = new OutputStreamWriter(to, StandardCharsets.UTF_8);
            table.to(text);
            text.flush();
        });
    }
}
