package stokewell.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a request brings, read with limits; and what is answered, written. */
final class Body {

    /** No request but a weather file needs more, bytes. */
    static final int MOST = 2 << 20;

    /** Within this a request must have come, ns. */
    private static final long SLOWEST = 30_000_000_000L;

    static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(40)
                            .maxStringLength(MOST)
                            .maxNameLength(1000)
                            .build())
                    .build())
            .build();

    private final JsonNode node;

    private Body(JsonNode node) {
        this.node = node;
    }

    /** The JSON object of a request. */
    static Body of(Context ctx) {
        try {
            JsonNode node = JSON.readTree(bytes(ctx, MOST));
            if (node == null || !node.isObject()) throw Refusal.request("An object of JSON is needed.", LIKE);
            return new Body(node);
        } catch (JacksonException e) {
            throw Refusal.request("This is not JSON: " + e.getOriginalMessage(), LIKE);
        }
    }

    private static final String LIKE = "GET /api/openapi.yaml tells what belongs here.";

    /** All bytes of a request, or a refusal where there are more: a sender hears it only after his last byte, up to some more. */
    static byte[] bytes(Context ctx, int most) {
        long heard = 4L * most;
        if (ctx.req().getContentLengthLong() > heard) throw tooLarge(most);
        long begun = System.nanoTime();
        long come = 0;
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] some = new byte[8192];
        try (InputStream in = ctx.req().getInputStream()) {
            for (int n = in.read(some); n >= 0; n = in.read(some)) {
                come += n;
                if (come > heard) throw tooLarge(most);
                if (come <= most) all.write(some, 0, n);
                if (System.nanoTime() - begun > SLOWEST) {
                    throw Refusal.guarded(408, "request", "The request came too slowly.", "Send it again.");
                }
            }
            if (come > most) throw tooLarge(most);
            return all.toByteArray();
        } catch (IOException e) {
            throw Refusal.request("The request broke off.", "Send it again.");
        }
    }

    private static Refusal tooLarge(int most) {
        return Refusal.guarded(413, "large", "More than " + (most >> 20) + " MiB were sent.", "Send less.");
    }

    /** Answers with JSON. */
    static void answer(Context ctx, Object value) {
        ctx.contentType("application/json; charset=utf-8").result(JSON.writeValueAsBytes(value));
    }

    /** A text that must be there. */
    String need(String key) {
        String text = text(key);
        if (text == null) throw Refusal.request("\"" + key + "\" is missing.", LIKE);
        return text;
    }

    /** A text, or null. Numbers are taken as they are written. */
    String text(String key) {
        JsonNode value = node.get(key);
        if (value == null || value.isNull()) return null;
        if (!value.isValueNode()) throw Refusal.request("\"" + key + "\" must be one text.", LIKE);
        return value.asString();
    }

    boolean has(String key) {
        return node.hasNonNull(key);
    }

    /** The object under a key, or null. */
    Body inner(String key) {
        JsonNode value = node.get(key);
        if (value == null || value.isNull()) return null;
        if (!value.isObject()) throw Refusal.request("\"" + key + "\" must be an object.", LIKE);
        return new Body(value);
    }

    /** The objects of a list; empty where there is none. */
    List<Body> each(String key) {
        List<Body> all = new ArrayList<>();
        for (JsonNode one : items(key)) {
            if (!one.isObject()) throw Refusal.request("\"" + key + "\" must be a list of objects.", LIKE);
            all.add(new Body(one));
        }
        return all;
    }

    /** The texts of a list; empty where there is none. */
    List<String> texts(String key) {
        List<String> all = new ArrayList<>();
        for (JsonNode one : items(key)) {
            if (!one.isValueNode()) throw Refusal.request("\"" + key + "\" must be a list of texts.", LIKE);
            all.add(one.asString());
        }
        return all;
    }

    private Iterable<JsonNode> items(String key) {
        JsonNode value = node.get(key);
        if (value == null || value.isNull()) return List.of();
        if (!value.isArray()) throw Refusal.request("\"" + key + "\" must be a list.", LIKE);
        if (value.size() > 200) throw Refusal.request("\"" + key + "\" has more than 200 items.", "Send fewer.");
        return value;
    }

    long whole(String key) {
        JsonNode value = node.get(key);
        if (value == null || !value.isIntegralNumber() || !value.canConvertToLong()) {
            throw Refusal.request("\"" + key + "\" must be a whole number.", LIKE);
        }
        return value.asLong();
    }

    List<String> keys() {
        return List.copyOf(node.propertyNames());
    }

    UnitSystem units() {
        return units(text("units"));
    }

    static UnitSystem units(String asked) {
        if (asked == null || asked.equals("si")) return UnitSystem.SI;
        if (asked.equals("us")) return UnitSystem.US;
        throw Refusal.request("\"units\" must be si or us.", LIKE);
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
