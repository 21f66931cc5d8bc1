package stokewell.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;
import java.util.Set;

/**
 * Who may come in. A page of another site can make a browser send requests here, and a name of another site can be made to
 * point here: so the Host must be one of ours, the Origin must be ours, what changes anything must carry a header that no
 * foreign page can send, and everything under /api must carry this start's session.
 */
final class Gate {

    static final String COOKIE = "stokewell-";

    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; "
            + "font-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'none'; base-uri 'none'; "
            + "frame-ancestors 'none'";

    private final Set<String> hosts;
    /** Cookies know no ports: two servers of one machine must not put out each other's. */
    private final String cookie;
    /** This start's session; a phone gets the same one once it has shown the code. */
    final String token;

    Gate(Set<String> hosts, int port) {
        this.hosts = Set.copyOf(hosts);
        cookie = COOKIE + port;
        byte[] random = new byte[24];
        new SecureRandom().nextBytes(random);
        token = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }

    /** Before anything else: headers that every answer carries, and the checks. */
    void check(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "no-referrer")
                .header("X-Frame-Options", "DENY")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(), microphone=(), geolocation=()")
                .header("Cache-Control", "no-store");
        host(ctx);
        origin(ctx);
        if (ctx.path().startsWith("/api/")) api(ctx);
    }

    private void host(Context ctx) {
        String host = ctx.header("Host");
        if (host == null || !hosts.contains(host.toLowerCase(Locale.ROOT))) {
            throw Refusal.guarded(
                    421, "host", "This server does not answer to that name.", "Open the address it told.");
        }
    }

    private void origin(Context ctx) {
        String origin = ctx.header("Origin");
        boolean foreign = origin != null && !origin.equals("http://" + ctx.header("Host"));
        String site = ctx.header("Sec-Fetch-Site");
        boolean page = ctx.method().name().equals("GET") && !ctx.path().startsWith("/api/");
        // a person may follow a link to the page itself; nothing else may come from elsewhere
        boolean crossing = site != null && !site.equals("same-origin") && !site.equals("none") && !page;
        if (foreign || crossing) {
            throw Refusal.guarded(403, "origin", "Another site has sent this.", "Open the page itself.");
        }
    }

    private void api(Context ctx) {
        boolean reads = ctx.method().name().equals("GET") || ctx.method().name().equals("HEAD");
        if (!reads && !"1".equals(ctx.header("X-Stokewell"))) {
            throw Refusal.guarded(403, "origin", "The header X-Stokewell is missing.", "Send X-Stokewell: 1.");
        }
        if (!reads) type(ctx);
        boolean open = ctx.path().equals("/api/openapi.yaml") || ctx.path().equals("/api/join");
        if (open || known(ctx)) return;
        throw Refusal.guarded(
                401, "session", "This server was started anew, or you have not joined.", "Open the address it told.");
    }

    private static void type(Context ctx) {
        String type = ctx.header("Content-Type");
        boolean body = ctx.req().getContentLengthLong() > 0 || ctx.header("Transfer-Encoding") != null;
        boolean table = ctx.path().startsWith("/api/weather/") || ctx.path().startsWith("/api/readings/");
        if (!body && type == null) return;
        String bare = type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        boolean fits = table ? bare.equals("text/csv") || bare.equals("text/plain") : bare.equals("application/json");
        if (!fits) {
            throw Refusal.guarded(
                    415,
                    "type",
                    "That kind of content is not taken here.",
                    table ? "Send text/csv or text/plain." : "Send application/json.");
        }
    }

    boolean known(Context ctx) {
        String said = ctx.header("X-Stokewell-Token");
        return same(said == null ? ctx.cookie(cookie) : said, token);
    }

    /** In a time that does not tell how much was right. */
    static boolean same(String said, String right) {
        return said != null && MessageDigest.isEqual(Body.utf8(said), Body.utf8(right));
    }

    /** Lets a browser in from now on. */
    void admit(Context ctx) {
        Cookie made = new Cookie(cookie, token);
        made.setPath("/");
        made.setHttpOnly(true);
        made.setSameSite(SameSite.STRICT);
        ctx.cookie(made);
    }
}
