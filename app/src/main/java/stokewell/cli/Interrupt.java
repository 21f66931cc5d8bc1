package stokewell.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Lets Ctrl-C end a long run where it can be left, and its last words be heard. */
final class Interrupt implements AutoCloseable {

    /** As long as a day of a season may take, s. */
    private static final int PATIENCE = 5;

    private final CountDownLatch over = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "interrupt");
    private final PrintWriter err;
    private volatile boolean asked;

    /** @param err where it is told that a run would not stop in time */
    Interrupt(PrintWriter err) {
        this.err = err;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether somebody asked to stop. */
    boolean asked() {
        return asked;
    }

    private void stop() {
        asked = true;
        try {
            if (over.await(PATIENCE, TimeUnit.SECONDS)) return;
            err.println("stopped; nothing is told");
            err.flush();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        over.countDown();
        if (!asked) Runtime.getRuntime().removeShutdownHook(hook);
    }
}
