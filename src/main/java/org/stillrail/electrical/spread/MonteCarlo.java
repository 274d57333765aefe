package org.stillrail.electrical.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.stillrail.electrical.Interruption;

/**
 * Many random banks and how their figures are spread. The same seed gives the same result on any number of threads, for every draw depends
 * on the seed and its own number only.
 *
 * @param figures     in the order of {@link RandomFigure}, then the further ones; without those that are not known of the bank
 * @param yields      one for each limit, in their order
 * @param together    the share of banks that keep all limits; null without a limit
 * @param rippleError upper bound of what the quick ripple leaves out, as a share of the ripple
 */
public record MonteCarlo(
        long seed, int runs, List<FigureSpread> figures, List<LimitYield> yields, Yield together, double rippleError) {

    public static final int MOST_RUNS = 200_000;
    private static final int MOST_THREADS = 64;
    private static final int BETWEEN_CHECKS = 64;

    public MonteCarlo {
        figures = List.copyOf(figures);
        yields = List.copyOf(yields);
    }

    /** Without further figures. */
    public static MonteCarlo of(RandomBank bank, List<RandomLimit> limits, int runs, long seed, int threads) {
        return of(bank, List.of(), limits, runs, seed, threads);
    }

    /**
     * @param runs    1 to {@value #MOST_RUNS}
     * @param threads 1 to {@value #MOST_THREADS}
     * @throws CancellationException when the calling thread is interrupted
     */
    public static MonteCarlo of(RandomBank bank, List<? extends FurtherFigures> further, List<RandomLimit> limits, int runs, long seed, int threads) {
        if (runs < 1 || runs > MOST_RUNS) {
            throw new IllegalArgumentException("runs must be 1 to " + MOST_RUNS + ", not " + runs);
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw new IllegalArgumentException("threads must be 1 to " + MOST_THREADS + ", not " + threads);
        }
        Draws draws = new Draws(bank, further);
        limits.stream().map(RandomLimit::figure).filter(figure -> !draws.figures().contains(figure)).findFirst().ifPresent(figure -> {
            throw new IllegalArgumentException("limits must not hold '" + figure.label() + "', which is not known of this bank");
        });
        double[][] values = new double[draws.figures().size()][runs];
        if (threads == 1) {
            run(draws, seed, 0, runs, values);
        } else {
            runOn(threads, draws, seed, runs, values);
        }
        double[] nominal = draws.nominal();
        List<FigureSpread> figures = new ArrayList<>();
        for (int k = 0; k < values.length; k++) {
            double[] known = Arrays.stream(values[k]).filter(value -> !Double.isNaN(value)).toArray();
            if (known.length > 0) {
                figures.add(new FigureSpread(draws.figures().get(k), nominal[k], known));
            }
        }
        List<double[]> judged = limits.stream().map(limit -> values[draws.figures().indexOf(limit.figure())]).toList();
        List<LimitYield> yields = new ArrayList<>();
        for (int k = 0; k < limits.size(); k++) {
            yields.add(new LimitYield(limits.get(k), kept(limits.subList(k, k + 1), judged.subList(k, k + 1), runs)));
        }
        return new MonteCarlo(seed, runs, figures, yields, limits.isEmpty() ? null : kept(limits, judged, runs), draws.rippleError());
    }

    private static void run(Draws draws, long seed, int from, int to, double[][] values) {
        for (int i = from; i < to; i++) {
            if (i % BETWEEN_CHECKS == 0) {
                Interruption.check();
            }
            draws.draw(seed, i, values);
        }
    }

    private static void runOn(int threads, Draws draws, long seed, int runs, double[][] values) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Callable<Void>> shares = new ArrayList<>();
            for (int k = 0; k < threads; k++) {
                int from = (int) ((long) runs * k / threads);
                int to = (int) ((long) runs * (k + 1) / threads);
                shares.add(() -> {
                    run(draws, seed, from, to, values);
                    return null;
                });
            }
            for (Future<Void> share : pool.invokeAll(shares)) {
                share.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("The calculation was called off");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** @param judged what each limit is held against, one value for each bank */
    private static Yield kept(List<RandomLimit> limits, List<double[]> judged, int runs) {
        int kept = 0;
        for (int i = 0; i < runs; i++) {
            int index = i;
            if (IntStream.range(0, limits.size()).allMatch(k -> limits.get(k).keptBy(judged.get(k)[index]))) {
                kept++;
            }
        }
        return Yield.of(kept, runs);
    }

    /** @throws IllegalArgumentException for one that is not known of the bank */
    public FigureSpread figure(DrawnFigure figure) {
        return figures.stream().filter(each -> each.figure().equals(figure)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(figure.label() + " is not known of this bank"));
    }

    /** One of the whole bank. */
    public FigureSpread figure(RandomFigure kind) {
        return figure(DrawnFigure.ofBank(kind));
    }
}
