package stokewell.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import stokewell.file.UnitSystem;

/** The local server of the page. */
public final class WebServer implements AutoCloseable {

    /** When a silent client is cut off, ms. */
    private static final long IDLE = 30_000;

    private static final int MOST_THREADS = 40;

    /**
     * How it is started.
     *
     * @param folder of the rig files
     * @param named  id of the rig to open; null for none
     * @param port   0 for any that is free
     * @param share  whether other machines of the network may join
     * @param units  that the page begins with
     * @param err    where failures are told to the person at the machine
     */
    public record Start(Path folder, String named, int port, boolean share, UnitSystem units, PrintWriter err) {}

    private final Start start;
    private final Javalin javalin;
    private final Api api;
    private final Pairing pairing = new Pairing();
    private Gate gate;

    private WebServer(Start start, Asking asking) {
        this.start = start;
        api = new Api(start, asking, this);
        javalin = Javalin.create(this::configure);
    }

    /** Starts. @throws Refusal where the port is taken */
    public static WebServer start(Start start, Asking asking) {
        WebServer server = new WebServer(start, asking);
        try {
            server.javalin.start(start.share() ? "0.0.0.0" : "127.0.0.1", start.port());
        } catch (JavalinBindException e) {
            server.close();
            throw Refusal.request("Port " + start.port() + " is taken.", "Give another: --port 7441, or 0 for any.");
        }
        int port = server.port();
        Set<String> hosts = new HashSet<>(List.of("127.0.0.1:" + port, "localhost:" + port));
        if (start.share()) for (String address : Lan.addresses()) hosts.add(address + ":" + port);
        server.gate = new Gate(hosts, port);
        return server;
    }

    public int port() {
        return javalin.port();
    }

    /** This start's session, for programs. */
    public String token() {
        return gate.token;
    }

    /** What to open in a browser of this machine. */
    public String address() {
        return "http://127.0.0.1:" + port() + "/join?key=" + gate.token;
    }

    /** What to open on a phone, once; null where nothing is shared or there is no network. */
    public String shared() {
        List<String> addresses = start.share() ? Lan.addresses() : List.of();
        return addresses.isEmpty()
                ? null
                : "http://" + addresses.get(0) + ":" + port() + "/join?code=" + pairing.code();
    }

    /** The code in it, to type in by hand. */
    public String code() {
        return pairing.code();
    }

    /** That address as a picture for a terminal. */
    public String sharedPicture() {
        return Pairing.inTerminal(Pairing.qr(shared()));
    }

    @Override
    public void close() {
        javalin.stop();
        api.close();
    }

    private void configure(JavalinConfig config) {
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, 2);
        threads.setDaemon(true);
        threads.setName("web");
        config.jetty.threadPool = threads;
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(false);
            http.setRequestHeaderSize(16 << 10);
            http.setIdleTimeout(IDLE);
        });
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        // this machine's own wire is faster than any packing
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = WeatherShelf.MOST + 1024L;
        config.routes.before(ctx -> gate.check(ctx));
        config.routes.exception(Refusal.class, (e, ctx) -> refuse(ctx, e));
        config.routes.exception(HttpResponseException.class, (e, ctx) -> refuse(ctx, plain(e.getStatus())));
        config.routes.exception(Exception.class, (e, ctx) -> {
            failed(e);
            refuse(ctx, Refusal.broken());
        });
        config.routes.get("/join", this::join);
        config.routes.post("/api/join", ctx -> {
            if (!start.share() || !pairing.use(Body.of(ctx).need("code"))) throw wrongCode();
            gate.admit(ctx);
            ctx.status(204);
        });
        api.routes(config.routes);
        config.routes.get("/", ctx -> Assets.send(ctx, ""));
        config.routes.get("/<path>", ctx -> Assets.send(ctx, ctx.pathParam("path")));
    }

    private void join(Context ctx) {
        boolean here = Gate.same(ctx.queryParam("key"), gate.token);
        if (!here && !(start.share() && pairing.use(ctx.queryParam("code")))) throw wrongCode();
        gate.admit(ctx);
        ctx.redirect("/");
    }

    private static Refusal wrongCode() {
        return Refusal.guarded(
                403,
                "code",
                "This is not the code that counts now.",
                "Read it again at the machine; each is good once.");
    }

    private static void refuse(Context ctx, Refusal refusal) {
        ctx.status(refusal.status);
        if (refusal.status == 503) ctx.header("Retry-After", "1");
        Body.answer(ctx, refusal.told());
    }

    private static Refusal plain(int status) {
        String how = "GET /api/openapi.yaml tells how.";
        return switch (status) {
            case 404 -> Refusal.unknown("There is nothing here.");
            case 405 -> Refusal.guarded(405, "method", "That cannot be done here.", how);
            case 413 -> Refusal.guarded(413, "large", "Too much was sent.", "Send less.");
            default -> Refusal.guarded(status, "request", "That was not understood.", how);
        };
    }

    /** Whether who asked has gone meanwhile: Jetty has taken the request back, and there is nobody to answer. */
    private static boolean takenBack(Throwable e) {
        StackTraceElement[] where = e.getStackTrace();
        return where.length > 0 && where[0].getClassName().startsWith("org.eclipse.jetty.ee10.servlet.Servlet");
    }

    /** The page is told that it failed, the person at the machine why. */
    void failed(Throwable e) {
        if (takenBack(e)) return;
        StringWriter trace = new StringWriter();
        e.printStackTrace(new PrintWriter(trace));
        start.err().println("The server failed at a request: " + trace);
        start.err().flush();
    }
}
