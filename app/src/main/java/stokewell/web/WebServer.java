package stokewell.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
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

    /** Where a slow client is cut off, ms. */
    private static final long IDLE = 30_000;

    private static final int MOST_THREADS = 32;

    /**
     * How it is started.
     *
     * @param folder of the rig files
     * @param named  id of the rig to open; null for none
     * @param port   0 for any that is free
     * @param units  that the page begins with
     */
    public record Start(Path folder, String named, int port, UnitSystem units, PrintWriter err) {}

    private final Start start;
    private final Javalin javalin;
    private final Api api;
    private Gate gate;

    private WebServer(Start start, Asking asking) {
        this.start = start;
        api = new Api(start, asking);
        javalin = Javalin.create(this::configure);
    }

    /** Starts; throws where the port is taken. */
    public static WebServer start(Start start, Asking asking) {
        WebServer server = new WebServer(start, asking);
        server.javalin.start("127.0.0.1", start.port());
        int port = server.javalin.port();
        Set<String> hosts = new HashSet<>(List.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port));
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
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = WeatherFiles.MOST + 1024L;
        config.http.generateEtags = false;
        config.routes.before(ctx -> gate.check(ctx));
        config.routes.exception(Refusal.class, (e, ctx) -> refuse(ctx, e));
        config.routes.exception(HttpResponseException.class, (e, ctx) -> refuse(ctx, plain(e.getStatus())));
        config.routes.exception(Exception.class, this::failed);
        config.routes.get("/join", ctx -> join(ctx));
        api.routes(config.routes);
        config.routes.get("/", ctx -> Assets.send(ctx, ""));
        config.routes.get("/<path>", ctx -> Assets.send(ctx, ctx.pathParam("path")));
    }

    private void join(Context ctx) {
        if (!Gate.same(ctx.queryParam("key"), gate.token)) {
            throw Refusal.guarded(403, "code", "This is not the key of this start.", "Open the address it told.");
        }
        gate.admit(ctx);
        ctx.redirect("/");
    }

    private static void refuse(Context ctx, Refusal refusal) {
        ctx.status(refusal.status);
        if (refusal.status == 503) ctx.header("Retry-After", "1");
        Body.answer(ctx, refusal.told());
    }

    private static Refusal plain(int status) {
        return switch (status) {
            case 404 -> Refusal.unknown("There is nothing here.");
            case 405 -> Refusal.guarded(405, "method", "That cannot be done here.", "GET /api/openapi.yaml tells how.");
            case 413 -> Refusal.guarded(413, "large", "Too much was sent.", "Send less.");
            default ->
                Refusal.guarded(status, "request", "That was not understood.", "GET /api/openapi.yaml tells how.");
        };
    }

    /** The page is told that it failed, the person at the machine why. */
    private void failed(Exception e, Context ctx) {
        StringWriter trace = new StringWriter();
        e.printStackTrace(new PrintWriter(trace));
        start.err().println(ctx.method() + " " + ctx.path() + " failed: " + trace);
        start.err().flush();
        refuse(
                ctx,
                Refusal.guarded(
                        500,
                        "failed",
                        "The program failed.",
                        "The terminal says where; please report it with the rig file."));
    }
}
