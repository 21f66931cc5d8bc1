package stokewell.web;

import io.javalin.http.sse.SseClient;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Long work, one at a time and behind the nights that people drag. */
final class Jobs implements AutoCloseable {

    private static final int MOST_WAITING = 8;
    private static final int MOST_KEPT = 24;
    private static final int MOST_LISTENERS = 24;
    /** How often a silent line is tried, ms. */
    private static final long HEARTBEAT = 10_000;

    private final Map<String, Job> jobs = new LinkedHashMap<>();
    private final ExecutorService worker;
    private final Semaphore listeners = new Semaphore(MOST_LISTENERS);
    private final SecureRandom random = new SecureRandom();
    private final Consumer<Throwable> failed;

    Jobs(Consumer<Throwable> failed) {
        this.failed = failed;
        worker = new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_WAITING), work -> {
            Thread thread = new Thread(work, "job");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /** Begins one as soon as its turn comes. */
    Job begin(String kind, Job.Work work) {
        byte[] id = new byte[9];
        random.nextBytes(id);
        Job job = new Job(HexFormat.of().formatHex(id), kind);
        try {
            worker.execute(() -> job.run(work, failed));
        } catch (RejectedExecutionException e) {
            throw Refusal.busy();
        }
        synchronized (jobs) {
            jobs.put(job.id, job);
            jobs.values().removeIf(old -> jobs.size() > MOST_KEPT && old.ended());
        }
        return job;
    }

    Job of(String id) {
        synchronized (jobs) {
            Job job = jobs.get(id);
            if (job == null) throw Refusal.unknown("There is no such job, or it is long done.");
            return job;
        }
    }

    /** Tells a listener everything from the first event to the last, in a thread of its own: a slow line stops no work. */
    void listen(String id, SseClient client) {
        Job job = of(id);
        if (!listeners.tryAcquire()) throw Refusal.busy();
        client.keepAlive();
        Thread thread = new Thread(
                () -> {
                    try {
                        tell(job, client);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    } finally {
                        listeners.release();
                        client.close();
                    }
                },
                "listener");
        thread.setDaemon(true);
        thread.start();
    }

    private static void tell(Job job, SseClient client) throws InterruptedException {
        for (int i = 0; !client.terminated(); ) {
            Job.Event event = job.await(i, HEARTBEAT);
            if (event == null) {
                client.sendComment("still here");
                continue;
            }
            client.sendEvent(event.name(), event.json(), String.valueOf(i++));
            if (event.last()) return;
        }
    }

    @Override
    public void close() {
        synchronized (jobs) {
            jobs.values().forEach(Job::stop);
        }
        worker.shutdownNow();
    }
}
