package org.stillrail.web;

import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Gives each calculation a limited time on one of a few threads. Time starts with the work, not with the wait for a thread.
 * Work that takes longer is interrupted, and long loops look for that ({@link org.stillrail.electrical.Interruption}), so that
 * nobody's processor is kept busy by an answer that nobody waits for. Nothing that touches the database may run in here: an
 * interrupt would close an embedded one.
 */
@Component
public class Computing implements AutoCloseable {

    private static final int WAITING = 64;
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(20);

    private final Duration budget;
    private final ThreadPoolExecutor threads;

    public Computing(@Value("${stillrail.calculation.budget:2s}") Duration budget) {
        this.budget = budget;
        int size = Math.max(2, Runtime.getRuntime().availableProcessors());
        AtomicInteger number = new AtomicInteger();
        this.threads = new ThreadPoolExecutor(size, size, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), work -> {
            Thread thread = new Thread(work, "calculation-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }

    /** As {@link #within(Duration, Callable)} with the budget of a call. */
    public <T> T within(Callable<T> work) {
        return within(budget, work);
    }

    /**
     * Runs the work and hands on what it returns or throws.
     *
     * @param longest that it may compute
     * @throws NoAnswerException when it takes too long, when too many calls wait already, or when it fails unexpectedly
     */
    public <T> T within(Duration longest, Callable<T> work) {
        CountDownLatch started = new CountDownLatch(1);
        Future<T> future = submit(() -> {
            started.countDown();
            return work.call();
        });
        try {
            if (!started.await(LONGEST_WAIT.toMillis(), TimeUnit.MILLISECONDS)) {
                throw NoAnswerException.busy();
            }
            return future.get(longest.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            throw NoAnswerException.outOfTime(longest);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw NoAnswerException.failed(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw NoAnswerException.busy();
        } finally {
            future.cancel(true);
        }
    }

    private <T> Future<T> submit(Callable<T> work) {
        try {
            return threads.submit(work);
        } catch (RejectedExecutionException e) {
            throw NoAnswerException.busy();
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
