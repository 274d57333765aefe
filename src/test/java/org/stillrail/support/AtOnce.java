package org.stillrail.support;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Several people who do the same thing at the same moment. */
public final class AtOnce {

    private AtOnce() {
    }

    /** @return what each of them got */
    public static <T> List<T> times(int people, Callable<T> action) throws Exception {
        CyclicBarrier together = new CyclicBarrier(people);
        ExecutorService threads = Executors.newFixedThreadPool(people);
        try {
            List<Future<T>> started = new ArrayList<>();
            for (int person = 0; person < people; person++) {
                started.add(threads.submit(() -> {
                    together.await();
                    return action.call();
                }));
            }
            List<T> results = new ArrayList<>();
            for (Future<T> each : started) {
                results.add(each.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
