package org.stillrail.verification;

import java.util.Comparator;

/** One passed check, in words; {@code share} is its error as a multiple of the tolerance. */
record Record(Topic topic, String testClass, String subject, Source source, String expected, String got, String tolerance, double share) {

    /** Tells checks apart too: equal in this order are comparisons of one and the same check. */
    static final Comparator<Record> IN_ORDER = Comparator.comparing(Record::topic).thenComparing(Record::testClass)
            .thenComparing(Record::subject).thenComparing(Record::expected);

    Record worse(Record other) {
        return other.share > share ? other : this;
    }
}
