package stokewell.run;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** Work that is done on another thread beside one's own. */
public final class Beside<T> {

    private final CompletableFuture<T> work;

    private Beside(CompletableFuture<T> work) {
        this.work = work;
    }

    /** Begins. */
    public static <T> Beside<T> begin(Supplier<T> work) {
        return new Beside<>(CompletableFuture.supplyAsync(work));
    }

    /** Waits for what comes of it; fails as the work itself has failed. */
    public T done() {
        try {
            return work.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException plain ? plain : e;
        }
    }
}
