package org.stillrail.verification;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Takes up what checks record while somebody asks for it; at other times they only assert. */
final class Records {

    private static Map<Record, Record> open;

    private Records() {
    }

    static synchronized void add(Record passed) {
        if (open != null) {
            open.merge(passed, passed, Record::worse);
        }
    }

    /** Runs tests and returns what they recorded, in the order of the document. */
    static List<Record> during(Runnable tests) {
        synchronized (Records.class) {
            open = new TreeMap<>(Record.IN_ORDER);
        }
        try {
            tests.run();
            synchronized (Records.class) {
                return List.copyOf(open.values());
            }
        } finally {
            synchronized (Records.class) {
                open = null;
            }
        }
    }
}
