package stokewell.web;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import stokewell.cli.PageAsking;
import stokewell.file.UnitSystem;
import tools.jackson.databind.JsonNode;

/** A server on a free port, and a program that asks it. */
final class Caller implements AutoCloseable {

    private final HttpClient client = HttpClient.newHttpClient();
    private final StringWriter errors = new StringWriter();
    final WebServer server;

    Caller(Path folder) {
        this(folder, false);
    }

    Caller(Path folder, boolean share) {
        server = WebServer.start(
                new WebServer.Start(folder, null, 0, share, UnitSystem.SI, new PrintWriter(errors)), new PageAsking());
    }

    /** An answer. */
    record Answer(int status, String text, HttpResponse<String> whole) {

        JsonNode json() {
            return Body.JSON.readTree(text);
        }

        String code() {
            return json().path("error").path("code").asString();
        }
    }

    Answer get(String path) {
        return send("GET", path, null, Map.of());
    }

    Answer post(String path, Object body) {
        return send("POST", path, Body.JSON.writeValueAsString(body), Map.of());
    }

    Answer put(String path, Object body) {
        return send("PUT", path, Body.JSON.writeValueAsString(body), Map.of());
    }

    Answer delete(String path) {
        return send("DELETE", path, null, Map.of());
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    /** As a program with the session, with some headers said otherwise; an empty one is left out. */
    Answer send(String method, String path, String body, Map<String, String> headers) {
        Map<String, String> all = new java.util.TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        all.put("X-Stokewell-Token", server.token());
        all.put("X-Stokewell", "1");
        if (body != null) all.put("Content-Type", "application/json");
        all.putAll(headers);
        HttpRequest.Builder request = request(path)
                .method(
                        method,
                        body == null ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body));
        all.forEach((name, value) -> {
            if (!value.isEmpty()) request.header(name, value);
        });
        return send(request.build());
    }

    Answer send(HttpRequest request) {
        try {
            HttpResponse<String> r = client.send(request, HttpResponse.BodyHandlers.ofString());
            return new Answer(r.statusCode(), r.body(), r);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    HttpClient client() {
        return client;
    }

    /** What no library would send: bytes as they are; returns all that comes back before the line is shut. */
    String raw(String bytes) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.setSoTimeout(5000);
            socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    /** What the person at the machine was told of failures: nothing that a request does may cause one. */
    String errors() {
        return errors.toString();
    }

    @Override
    public void close() {
        server.close();
    }
}
