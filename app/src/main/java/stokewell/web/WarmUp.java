package stokewell.web;

import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Runs some nights of the first rig that is looked at, as a drag would, while the person still looks: the machine's compiler
 * learns from them, so that his first drag finds quick code. Ends as soon as a hand moves.
 */
final class WarmUp {

    private static final int NIGHTS = 30;

    private final Nights nights;
    private final AtomicBoolean begun = new AtomicBoolean();
    private volatile boolean ended;

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

    /** A hand moves, or the server ends. */
    void end() {
        ended = true;
    }

    private void run(Nights.Ready ready) {
        Drags.Wanted wanted = new Drags.Wanted() {
            @Override
            public boolean still() {
                return !ended;
            }

            @Override
            public boolean crowded() {
                return false;
            }
        };
        try {
            for (int i = 0; i < NIGHTS && !ended; i++) Nights.told(nights.run(ready, "warm-up", wanted), wanted);
        } catch (Refusal e) {
            // nobody asked for it: who does will be told
        }
    }
}
