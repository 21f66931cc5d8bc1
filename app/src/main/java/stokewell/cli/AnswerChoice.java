package stokewell.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What a run is asked about, and as what its answer is wanted. */
final class AnswerChoice extends TableChoice {

    private static final int WIDTH = 80;
    private static final int WIDEST = 120;

    @Option(names = "--no-plot", description = "Leave the picture out.")
    boolean noPlot;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page to look at and to print, too.")
    Path html;

    @Option(names = "--png", paramLabel = "FILE", description = "Write the picture, too.")
    Path png;

    @Override
    void check() {
        super.check();
        OutFile.check("--html", html);
        OutFile.check("--png", png);
    }

    /** Columns of the terminal, as many as a plot takes. */
    int columns() {
        return Math.max(WIDTH, Math.min(WIDEST, Integer.getInteger("stokewell.columns", WIDTH)));
    }
}
