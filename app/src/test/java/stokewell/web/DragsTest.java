package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class DragsTest {

    private final Drags drags = new Drags(1);
    private final CountDownLatch gate = new CountDownLatch(1);
    private final List<String> run = new CopyOnWriteArrayList<>();

    @AfterEach
    void end() {
        drags.close();
    }

    /** The one thread is taken until the gate opens. */
    private void hold() throws Exception {
        CountDownLatch held = new CountDownLatch(1);
        drags.ask(() -> {
            held.countDown();
            return gate.await(10, TimeUnit.SECONDS);
        });
        held.await();
    }

    private CompletableFuture<String> ask(String who, long seq) {
        return drags.ask(who, seq, wanted -> {
            run.add(who + seq);
            return who + seq;
        });
    }

    private static void stale(CompletableFuture<?> answer) {
        assertThatThrownBy(answer::join)
                .isInstanceOf(CompletionException.class)
                .hasCauseInstanceOf(Refusal.class)
                .hasMessageContaining("newer");
    }

    @Test
    void theNewestOfAHandWinsAndTakesTheTurnOfTheOlder() throws Exception {
        hold();
        CompletableFuture<String> first = ask("a", 1);
        CompletableFuture<String> other = ask("b", 1);
        CompletableFuture<String> second = ask("a", 2);
        CompletableFuture<String> third = ask("a", 3);
        stale(first);
        stale(second);
        gate.countDown();
        assertThat(third.join()).isEqualTo("a3");
        assertThat(other.join()).isEqualTo("b1");
        assertThat(run).containsExactly("a3", "b1");
    }

    @Test
    void anAskThatWasOvertakenOnTheWayIsStaleAtOnce() throws Exception {
        hold();
        CompletableFuture<String> newer = ask("a", 7);
        stale(ask("a", 6));
        stale(ask("a", 7));
        gate.countDown();
        assertThat(newer.join()).isEqualTo("a7");
    }

    @Test
    void whatRunsForAnOlderAskIsToldToEnd() throws Exception {
        CountDownLatch running = new CountDownLatch(1);
        CountDownLatch ended = new CountDownLatch(1);
        CompletableFuture<String> old = drags.ask("a", 1, wanted -> {
            running.countDown();
            while (wanted.still()) Thread.sleep(1);
            ended.countDown();
            return "late";
        });
        running.await();
        CompletableFuture<String> young = ask("a", 2);
        stale(old);
        ended.await();
        assertThat(young.join()).isEqualTo("a2");
    }

    @Test
    void beyondItsBoundTheQueueSaysBusyAndKeepsWhatItHas() throws Exception {
        hold();
        List<CompletableFuture<String>> kept = new java.util.ArrayList<>();
        Refusal busy = null;
        for (int i = 0; i < 1000 && busy == null; i++) {
            try {
                kept.add(ask("hand" + i, 1));
            } catch (Refusal refusal) {
                busy = refusal;
            }
        }
        assertThat(busy).isNotNull();
        assertThat(busy.status).isEqualTo(503);
        assertThat(kept).hasSizeBetween(64, 256);
        gate.countDown();
        for (CompletableFuture<String> one : kept) assertThat(one.join()).startsWith("hand");
        assertThat(ask("late", 1).join()).isEqualTo("late1");
    }

    @Test
    void aFailureIsAnAnswerAndTheThreadGoesOn() {
        CompletableFuture<String> fails = drags.ask("a", 1, wanted -> {
            throw new IllegalStateException("broken");
        });
        assertThatThrownBy(fails::join).hasMessageContaining("broken");
        assertThat(ask("a", 2).join()).isEqualTo("a2");
    }
}
