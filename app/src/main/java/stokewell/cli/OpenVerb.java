package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.file.UnitSystem;
import stokewell.web.Refusal;
import stokewell.web.WebServer;

/** Opens the page. */
@Command(
        name = "open",
        description = "Open the page: draw the rig, drag a size, watch the night change. Runs until Ctrl-C.",
        sortOptions = false)
final class OpenVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Parameters(
            paramLabel = "RIG|FOLDER",
            arity = "0..1",
            description = "A rig file, or the folder where your rigs lie. Default: the folder Stokewell in your home.")
    Path path;

    @Option(names = "--port", paramLabel = "N", defaultValue = "7440", description = "Default: ${DEFAULT-VALUE}.")
    int port;

    @Option(
            names = "--share",
            description = "Let phones of this network join with a one-time code. Who is on the network can listen in.")
    boolean share;

    @Option(names = "--no-browser", description = "Print the address and open no browser.")
    boolean noBrowser;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Override
    public Integer call() throws Exception {
        Path folder = path == null ? Path.of(System.getProperty("user.home"), "Stokewell") : path.toAbsolutePath();
        String named = null;
        if (path != null && !Files.isDirectory(path)) {
            named = id(path);
            folder = path.toAbsolutePath().getParent();
        }
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        try (WebServer server = started(new WebServer.Start(folder, named, port, share, units, err))) {
            tell(server, folder, out);
            if (!noBrowser) browse(server.address());
            CountDownLatch ended = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(server::close));
            ended.await();
        }
        return 0;
    }

    private static WebServer started(WebServer.Start start) {
        try {
            return WebServer.start(start, new PageAsking());
        } catch (Refusal refusal) {
            throw Complaint.failed(refusal.getMessage(), refusal.remedy());
        }
    }

    private static void tell(WebServer server, Path folder, PrintWriter out) {
        out.println("The page is open for this machine at");
        out.println("    " + server.address());
        if (server.shared() != null) {
            out.println("and, once, for a phone of this network at");
            out.println("    " + server.shared());
            if (System.console() != null) out.print(server.sharedPicture());
            out.println("The page shows the next code. What is sent between them is not encrypted.");
        }
        out.println("Rigs are kept in " + folder + ". Ctrl-C ends.");
        out.flush();
    }

    private static String id(Path path) {
        String name = String.valueOf(path.getFileName());
        InFile.check("", path);
        if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
            throw Complaint.usage(path + " is not a rig file.", "Its name must end in .yaml.");
        }
        return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
    }

    /** Asks the desktop to show the page; where there is none, the address stands in the terminal. */
    private static void browse(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(java.util.Locale.ROOT);
        String[] command = system.contains("mac")
                ? new String[] {"open", address}
                : system.contains("win")
                        ? new String[] {"rundll32", "url.dll,FileProtocolHandler", address}
                        : new String[] {"xdg-open", address};
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // no desktop here
        }
    }
}
