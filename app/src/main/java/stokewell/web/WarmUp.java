package stokewell.web;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Runs nights of the first rig that is looked at, as a drag would, while the person still looks: the machine's compiler
 * learns from them, so that drags find quick code and a compiler that has done its work. Waits while a hand moves.
 */
final class WarmUp {

    /** Nights that are still to be run. The compiler is the machine's, not a server's: whoever starts another finds it warm. */
    private static final AtomicInteger LEFT = new AtomicInteger(200);
    /** So long after the last ask of a hand it rests, ns. */
    private static final long REST = 2_000_000_000L;

    private final Nights nights;
    private final AtomicBoolean begun = new AtomicBoolean();
    private volatile boolean ended;
    private volatile long moved = System.nanoTime() - REST;

    WarmUp(Nights nights) {
        this.nights = nights;
    }

    /** After a rig's night at rest; only the first of a server's. */
    void after(Nights.Ready ready) {
        if (ended || begun.getAndSet(true)) return;
        Thread thread = new Thread(() -> run(ready), "warm-up");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    /** A hand moves. */
    void moved() {
        moved = System.nanoTime();
    }

    /** The server ends. */
    void end() {
        ended = true;
    }

    private boolean rests() {
        return System.nanoTime() - moved >= REST;
    }

    private void run(Nights.Ready ready) {
        Drags.Wanted wanted = new Drags.Wanted() {
            @Override
            public boolean still() {
                return !ended && rests();
            }

            @Override
            public boolean crowded() {
                return false;
            }
        };
        while (!ended && LEFT.getAndDecrement() > 0) {
            try {
                while (!rests()) Thread.sleep(REST / 10_000_000);
                Nights.told(nights.run(ready, "warm-up", wanted), wanted);
            } catch (Refusal e) {
                // a hand moved, or the rig cannot be run: nobody asked for it, and who does will be told
            } catch (InterruptedException e) {
                return;
            }
        }
    }
}
