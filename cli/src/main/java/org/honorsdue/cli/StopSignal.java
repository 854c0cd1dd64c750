package org.honorsdue.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Whether the user has asked to stop (Ctrl-C, or the machine is going down). Between the request and the end of the
 * program there is time to finish writing; {@link #close} says that all is written.
 */
final class StopSignal implements AutoCloseable {
    /** What a program that was interrupted ends with, by the custom of shells. */
    static final int EXIT_CODE = 130;

    private static final long SECONDS_TO_FINISH = 20;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread onShutdown = new Thread(this::request, "stop");
    private volatile boolean given;

    StopSignal() {
        Runtime.getRuntime().addShutdownHook(onShutdown);
    }

    boolean given() {
        return given;
    }

    private void request() {
        given = true;
        try {
            finished.await(SECONDS_TO_FINISH, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        finished.countDown();
        if (!given) {
            try {
                Runtime.getRuntime().removeShutdownHook(onShutdown);
            } catch (IllegalStateException e) {
                given = true; // the request came at this very moment; there is nothing left to finish
            }
        }
    }
}
