package stokewell.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

/** Long work, and what it has told so far. */
final class Job {

    /** One thing told. @param name progress, part, done, failed or stopped */
    record Event(String name, String json) {
        boolean last() {
            return !name.equals("progress") && !name.equals("part");
        }
    }

    /** What does the work. */
    interface Work {
        /** Tells as it goes; returns what came of it. */
        Map<String, Object> run(Job job) throws Exception;
    }

    final String id;
    final String kind;
    private final List<Event> events = new ArrayList<>();
    private String state = "waiting";
    private double share;
    private double toldShare = -1;
    private volatile boolean stopping;

    Job(String id, String kind) {
        this.id = id;
        this.kind = kind;
    }

    synchronized Map<String, Object> told() {
        return Map.of("job", id, "kind", kind, "state", state, "share", share);
    }

    /** How far it is; told only where it shows. @throws CancellationException where it is to stop */
    void progress(double done, String what) {
        goOn();
        synchronized (this) {
            share = done;
            if (done - toldShare < 0.01) return;
            toldShare = done;
        }
        tell("progress", Map.of("share", done, "told", what));
    }

    void part(Map<String, Object> part) {
        goOn();
        tell("part", part);
    }

    /** @throws CancellationException where it is to stop */
    void goOn() {
        if (stopping) throw new CancellationException("stopped");
    }

    private synchronized void tell(String name, Map<String, Object> what) {
        events.add(new Event(name, Body.JSON.writeValueAsString(what)));
        notifyAll();
    }

    /** Waits for the event of that number; null where none has come for so long. */
    synchronized Event await(int number, long millis) throws InterruptedException {
        if (events.size() <= number) wait(millis);
        return events.size() > number ? events.get(number) : null;
    }

    void stop() {
        stopping = true;
        synchronized (this) {
            if (state.equals("waiting")) end("stopped", Map.of());
        }
    }

    synchronized boolean ended() {
        return !state.equals("waiting") && !state.equals("running");
    }

    private synchronized void end(String how, Map<String, Object> what) {
        if (ended()) return;
        state = how;
        tell(how, what);
    }

    /** Runs to its end, whatever that is. @param failed is told of what no one foresaw */
    void run(Work work, java.util.function.Consumer<Throwable> failed) {
        synchronized (this) {
            if (ended()) return;
            state = "running";
        }
        try {
            end("done", work.run(this));
        } catch (CancellationException e) {
            end("stopped", Map.of());
        } catch (Refusal e) {
            end("failed", e.told());
        } catch (Throwable e) {
            failed.accept(e);
            end("failed", Refusal.broken().told());
        }
    }
}
