package stokewell.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;

/**
 * Runs nights for many hands at once on a few threads. Each hand's newest ask wins: one that waits is put into the place of
 * the older one, so that nobody who drags on loses his turn; one that runs for an older ask is answered as stale at once and
 * ends at its next stop. What waits is bounded; beyond that the answer is busy.
 */
final class Drags implements AutoCloseable {

    /** What is asked whether to go on. */
    interface Wanted {
        boolean still();
    }

    /** Work that stops early where nobody wants its answer any more. */
    interface Work<T> {
        T run(Wanted wanted) throws Exception;
    }

    private static final int MOST_WAITING = 128;
    /** Hands that are remembered; who has not dragged for longest is forgotten first. */
    private static final int MOST_HANDS = 1000;

    private final class Turn<T> implements Runnable, Wanted {
        private final CompletableFuture<T> answer = new CompletableFuture<>();
        private final Work<T> work;

        Turn(Work<T> work) {
            this.work = work;
        }

        @Override
        public boolean still() {
            return !answer.isDone();
        }

        void stale() {
            answer.completeExceptionally(Refusal.stale());
        }

        @Override
        public void run() {
            if (!still()) return;
            try {
                answer.complete(work.run(this));
            } catch (Throwable e) {
                answer.completeExceptionally(e);
            }
        }
    }

    private final class Hand {
        private long newest = Long.MIN_VALUE;
        private Turn<?> waiting;
        private Turn<?> running;
    }

    private final Map<String, Hand> hands = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Hand> eldest) {
            Hand hand = eldest.getValue();
            return size() > MOST_HANDS && hand.waiting == null && hand.running == null;
        }
    };
    private final java.util.ArrayDeque<Object> queue = new java.util.ArrayDeque<>();
    private final Semaphore ready = new Semaphore(0);
    private final Thread[] threads;
    private volatile boolean closed;

    Drags(int count) {
        threads = new Thread[count];
        for (int i = 0; i < count; i++) {
            threads[i] = new Thread(this::serve, "night-" + i);
            threads[i].setDaemon(true);
            threads[i].start();
        }
    }

    /** Asks without a hand: it keeps its turn. */
    <T> CompletableFuture<T> ask(Callable<T> work) {
        Turn<T> turn = new Turn<>(wanted -> work.call());
        synchronized (this) {
            enqueue(turn);
        }
        return turn.answer;
    }

    /** Asks for a hand. @param seq grows with each of its asks */
    <T> CompletableFuture<T> ask(String who, long seq, Work<T> work) {
        Turn<T> turn = new Turn<>(work);
        synchronized (this) {
            Hand hand = hands.computeIfAbsent(who, w -> new Hand());
            if (seq <= hand.newest) {
                turn.stale();
                return turn.answer;
            }
            if (hand.waiting == null) enqueue(hand);
            else hand.waiting.stale();
            hand.newest = seq;
            if (hand.running != null) hand.running.stale();
            hand.waiting = turn;
        }
        return turn.answer;
    }

    private void enqueue(Object waiting) {
        if (queue.size() >= MOST_WAITING) throw Refusal.busy();
        queue.add(waiting);
        ready.release();
    }

    private void serve() {
        while (!closed) {
            Turn<?> turn;
            Hand hand = null;
            try {
                ready.acquire();
            } catch (InterruptedException e) {
                return;
            }
            synchronized (this) {
                Object next = queue.poll();
                if (next == null) continue;
                if (next instanceof Turn<?> plain) {
                    turn = plain;
                } else {
                    hand = (Hand) next;
                    turn = hand.waiting;
                    hand.waiting = null;
                    hand.running = turn;
                }
            }
            turn.run();
            if (hand == null) continue;
            synchronized (this) {
                if (hand.running == turn) hand.running = null;
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        for (Thread thread : threads) thread.interrupt();
    }
}
