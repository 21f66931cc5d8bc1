package stokewell.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Lets Ctrl-C end a long run where it can be left, and its last words be heard. */
final class Interrupt implements AutoCloseable {

    /** As long as a day of a season may take, s. */
    private static final int PATIENCE = 5;

    private final CountDownLatch over = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "interrupt");
    private volatile boolean asked;

    Interrupt() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether somebody asked to stop. */
    boolean asked() {
        return asked;
    }

    private void stop() {
        asked = true;
        try {
            over.await(PATIENCE, TimeUnit.SECONDS);
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
