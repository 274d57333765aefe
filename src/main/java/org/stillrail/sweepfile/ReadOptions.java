package org.stillrail.sweepfile;

import java.util.Objects;

/**
 * What the person who imports a file says about it.
 *
 * @param fixture how the part was connected
 * @param columns what the columns of a text file are; null to find out from its headings. Without meaning for Touchstone
 * @param port    1 or 2: the port whose reflection is read from a two-port file
 * @param block   which of several sweeps in one text file, counted from 1; 0 takes the first and warns if there are more
 */
public record ReadOptions(Fixture fixture, ColumnMapping columns, int port, int block) {

    public ReadOptions {
        Objects.requireNonNull(fixture, "fixture");
        if (port != 1 && port != 2) {
            throw new IllegalArgumentException("port must be 1 or 2, not " + port);
        }
        if (block < 0) {
            throw new IllegalArgumentException("block must be 1 or more, not " + block);
        }
    }

    public static ReadOptions of(Fixture fixture) {
        return new ReadOptions(fixture, null, 1, 0);
    }

    public ReadOptions withColumns(ColumnMapping mapping) {
        return new ReadOptions(fixture, mapping, port, block);
    }

    public ReadOptions withPort(int number) {
        return new ReadOptions(fixture, columns, number, block);
    }

    public ReadOptions withBlock(int number) {
        return new ReadOptions(fixture, columns, port, number);
    }
}
