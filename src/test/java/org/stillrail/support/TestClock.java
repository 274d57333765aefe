package org.stillrail.support;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until a test moves it. */
public final class TestClock extends Clock {

    private Instant now = Instant.parse("2031-03-04T05:06:07.123456Z");

    public synchronized void advance(Duration by) {
        now = now.plus(by);
    }

    @Override
    public synchronized Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("Times are UTC");
    }
}
