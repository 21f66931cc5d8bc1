package stokewell.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The way in from a shell. */
public final class Main {

    private Main() {}

    /** Runs a verb and ends the process with its exit code: see docs/verbs.md. */
    public static void main(String[] args) {
        PrintWriter out = utf8(FileDescriptor.out);
        PrintWriter err = utf8(FileDescriptor.err);
        int code = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs a verb in this process. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = Stokewell.line(args)
                .setOut(out)
                .setErr(err)
                .setUsageHelpAutoWidth(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setAbbreviatedOptionsAllowed(false)
                .setParameterExceptionHandler(Complaints::aboutUsage)
                .setExecutionExceptionHandler(Complaints::aboutRun);
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    private static PrintWriter utf8(FileDescriptor to) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8), false);
    }
}
