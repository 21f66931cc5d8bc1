package stokewell.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.regex.Pattern;

/** The page's own files, out of the program itself: nothing of the disk can be reached here. */
final class Assets {

    private static final Pattern NAME = Pattern.compile("[a-zA-Z0-9][a-zA-Z0-9._-]*(/[a-zA-Z0-9][a-zA-Z0-9._-]*){0,4}");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "mjs", "text/javascript; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "json", "application/json; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2",
            "txt", "text/plain; charset=utf-8",
            "webmanifest", "application/manifest+json");

    /** Libraries that the page leans on, out of their own jars. */
    private static final Map<String, String> LIBRARIES =
            Map.of("lib/preact.js", "/META-INF/resources/webjars/preact/10.28.0/dist/preact.mjs");

    private Assets() {}

    /** Answers with the file that the path names. */
    static void send(Context ctx, String path) {
        String name = path.isEmpty() ? "index.html" : path;
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        byte[] bytes = type != null && NAME.matcher(name).matches()
                ? read(LIBRARIES.getOrDefault(name, "page/" + name))
                : null;
        if (bytes == null) throw Refusal.unknown("There is no such page.");
        String tag = '"' + RigFolder.version(new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1)) + '"';
        ctx.header("ETag", tag).header("Cache-Control", "no-cache");
        if (tag.equals(ctx.header("If-None-Match"))) ctx.status(304);
        else ctx.contentType(type).result(bytes);
    }

    /** A file beside this class in the program, or null. */
    static byte[] read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream(name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            return null;
        }
    }
}
