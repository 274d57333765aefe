package org.stillrail.electrical;

import java.util.concurrent.CancellationException;

/** Lets whoever waits for a long calculation call it off by interrupting its thread. */
public final class Interruption {

    private Interruption() {
    }

    /**
     * For the turns of long loops; costs next to nothing.
     *
     * @throws CancellationException when the thread has been interrupted; the mark stays on the thread
     */
    public static void check() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The calculation was called off");
        }
    }
}
