package stokewell.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stokewell.cli.Main;

/**
 * Many hands on one server, a process of its own with a bounded heap. Every hand drags one size of one of the example rigs to
 * and fro without a rest, as the page does: it asks for where it is now as soon as the last answer has come.
 */
public final class Draggers {

    private static final int HEAP = 256;
    private static final Pattern ADDRESS = Pattern.compile("(http://127\\.0\\.0\\.1:\\d+)/join\\?key=(\\S+)");
    private static final Pattern COLLECTED = Pattern.compile("(\\d+)M->(\\d+)M\\((\\d+)M\\)");

    private static final String[] RIGS = {"boat-shed", "saddlery", "joinery"};
    private static final String[] KEYS = {"store.jacket", "room.leakage.at50Pa", "store.realLoss", "pickups.0.area"};

    private final String address;
    private final String token;
    private final AtomicInteger stale = new AtomicInteger();
    private final AtomicInteger busy = new AtomicInteger();
    private final AtomicInteger failed = new AtomicInteger();
    private volatile boolean counting;
    private volatile boolean ended;

    private Draggers(String address, String token) {
        this.address = address;
        this.token = token;
    }

    /** @param args hands, seconds to warm, seconds to count */
    public static void main(String[] args) throws Exception {
        int hands = args.length > 0 ? Integer.parseInt(args[0]) : 50;
        int warm = args.length > 1 ? Integer.parseInt(args[1]) : 20;
        int count = args.length > 2 ? Integer.parseInt(args[2]) : 30;
        Path folder = Files.createTempDirectory("draggers");
        Path log = folder.resolve("gc.log");
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + HEAP + "m",
                        "-XX:+UseSerialGC",
                        "-XX:ActiveProcessorCount=2",
                        "-Xlog:gc:file=" + log,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "open",
                        folder.toString(),
                        "--port",
                        "0",
                        "--no-browser")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            Matcher told = told(server);
            new Draggers(told.group(1), told.group(2)).run(server.toHandle(), hands, warm, count);
        } finally {
            server.destroy();
            server.waitFor();
        }
        heap(log);
    }

    private static Matcher told(Process server) throws IOException {
        BufferedReader out = new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher m = ADDRESS.matcher(line);
            if (m.find()) return m;
        }
        throw new IOException("the server did not start");
    }

    private void run(ProcessHandle server, int hands, int warm, int count) throws InterruptedException {
        List<List<Double>> each = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        HttpClient client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
        for (int i = 0; i < hands; i++) {
            List<Double> own = new ArrayList<>();
            each.add(own);
            int hand = i;
            Thread thread = new Thread(() -> drag(client, hand, own));
            thread.start();
            threads.add(thread);
        }
        Thread.sleep(1000L * warm);
        Duration before = cpu(server);
        counting = true;
        Thread.sleep(1000L * count);
        counting = false;
        double cpu = cpu(server).minus(before).toMillis();
        ended = true;
        for (Thread thread : threads) thread.join();
        double[] all =
                each.stream().flatMap(List::stream).mapToDouble(d -> d).sorted().toArray();
        int fewest = each.stream().mapToInt(List::size).min().orElse(0);
        System.out.printf(
                Locale.ROOT,
                "%d hands, %d s: %d answers, %.0f a second; median %.0f ms, 95th percentile %.0f ms, worst %.0f ms%n",
                hands,
                count,
                all.length,
                all.length / (double) count,
                at(all, 0.5),
                at(all, 0.95),
                at(all, 1));
        System.out.printf(
                Locale.ROOT,
                "processor time of the server: %.0f ms an answer, %.1f of its 2 processors; fewest answers of a hand: %d; "
                        + "stale %d, busy %d, failed %d%n",
                cpu / all.length,
                cpu / (1000.0 * count),
                fewest,
                stale.get(),
                busy.get(),
                failed.get());
    }

    private static Duration cpu(ProcessHandle server) {
        return server.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private static double at(double[] sorted, double share) {
        if (sorted.length == 0) return Double.NaN;
        return sorted[(int) Math.min(sorted.length - 1.0, Math.ceil(share * sorted.length))];
    }

    private void drag(HttpClient client, int hand, List<Double> millis) {
        String rig = RIGS[hand % RIGS.length];
        String key = KEYS[hand / RIGS.length % KEYS.length];
        for (int seq = 1; !ended; seq++) {
            double at = 0.5 + 0.5 * Math.sin(0.07 * seq + hand);
            String body = String.format(
                    Locale.ROOT,
                    "{\"rig\":\"example:%s\",\"set\":[{\"key\":\"%s\",\"value\":\"%s\"}],\"drag\":{\"who\":\"hand%d\",\"seq\":%d}}",
                    rig,
                    key,
                    value(key, at),
                    hand,
                    seq);
            long begun = System.nanoTime();
            try {
                HttpResponse<byte[]> answer = client.send(asked(body), HttpResponse.BodyHandlers.ofByteArray());
                double took = (System.nanoTime() - begun) * 1e-6;
                if (!counting) continue;
                if (answer.statusCode() == 200) millis.add(took);
                else if (answer.statusCode() == 409) stale.incrementAndGet();
                else if (answer.statusCode() == 503) busy.incrementAndGet();
                else failed.incrementAndGet();
            } catch (IOException e) {
                failed.incrementAndGet();
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private static String value(String key, double at) {
        return switch (key) {
            case "store.jacket" -> String.format(Locale.ROOT, "%.1f mm mineral wool", 60 + 240 * at);
            case "room.leakage.at50Pa" -> String.format(Locale.ROOT, "%.2f 1/h", 8 + 10 * at);
            case "store.realLoss" -> String.format(Locale.ROOT, "%.3f", 1.2 + at);
            default -> String.format(Locale.ROOT, "%.3f m2", 0.5 + 0.5 * at);
        };
    }

    private HttpRequest asked(String body) {
        return HttpRequest.newBuilder(URI.create(address + "/api/night"))
                .header("X-Stokewell-Token", token)
                .header("X-Stokewell", "1")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
    }

    /** What the heap held before and after its collections, of {@value #HEAP} MiB that it may have. */
    private static void heap(Path log) throws IOException {
        int before = 0;
        int after = 0;
        int count = 0;
        for (String line : Files.readAllLines(log)) {
            Matcher m = COLLECTED.matcher(line);
            if (!m.find()) continue;
            count++;
            before = Math.max(before, Integer.parseInt(m.group(1)));
            after = Math.max(after, Integer.parseInt(m.group(2)));
        }
        System.out.printf(
                Locale.ROOT,
                "heap bounded at %d MiB: at most %d MiB before a collection, %d MiB after; %d collections%n",
                HEAP,
                before,
                after,
                count);
    }
}
