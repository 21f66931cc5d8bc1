package stokewell.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import stokewell.file.UnitSystem;

/** What a run is asked about, and as what its answer is wanted. */
final class AnswerChoice {

    private static final int WIDTH = 80;
    private static final int WIDEST = 120;

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

    @Option(names = "--no-plot", description = "Leave the picture out.")
    boolean noPlot;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page to look at and to print, too.")
    Path html;

    @Option(names = "--png", paramLabel = "FILE", description = "Write the picture, too.")
    Path png;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write every sample of the run, too.")
    Path csv;

    /** Complains before a run where one of the files cannot be written. */
    void check() {
        OutFile.check("--html", html);
        OutFile.check("--png", png);
        OutFile.check("--csv", csv);
    }

    /** Columns of the terminal, as many as a plot takes. */
    int columns() {
        return Math.max(WIDTH, Math.min(WIDEST, Integer.getInteger("stokewell.columns", WIDTH)));
    }

    /** Writes what a table shall hold. */
    interface Table {
        void to(Writer out) throws IOException;
    }

    void writeTable(Table table) throws IOException {
        OutFile.write(csv, to -> {
            OutputStreamWriter text = new OutputStreamWriter(to, StandardCharsets.UTF_8);
            table.to(text);
            text.flush();
        });
    }
}
