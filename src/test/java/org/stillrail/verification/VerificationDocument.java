package org.stillrail.verification;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.Set;
import java.util.stream.Collectors;

/** docs/verification.md as text. */
final class VerificationDocument {

    private static final String HEADING = """
            | what | expected | got | tolerance | source | how near | test |
            |---|---|---|---|---|---|---|
            """;
    private static final int GOT = 3;

    private VerificationDocument() {
    }

    static String of(List<Record> records) {
        StringBuilder text = new StringBuilder(introduction(records));
        for (Topic topic : Topic.values()) {
            List<Record> chapter = records.stream().filter(record -> record.topic() == topic).toList();
            if (!chapter.isEmpty()) {
                text.append("\n## ").append(topic.title()).append("\n\n").append(HEADING);
                chapter.forEach(record -> text.append(row(record)));
            }
        }
        return text.toString();
    }

    private static String introduction(List<Record> records) {
        String counts = Arrays.stream(Source.Standing.values())
                .map(standing -> standing.words() + " " + records.stream().filter(r -> r.source().standing() == standing).count())
                .collect(Collectors.joining(", "));
        String chapters = Arrays.stream(Topic.values())
                .map(topic -> "- [%s](#%s): %d\n".formatted(topic.title(), topic.anchor(), records.stream().filter(r -> r.topic() == topic).count()))
                .collect(Collectors.joining());
        return """
                # Verification

                What the calculations were compared with outside the program: published tables and worked examples, standards, closed
                forms from textbooks, and computations by other code. The equations themselves are in [the method](method.md).

                This page is written by the tests; do not edit it. Each row is a check that a test makes at every build. A row passes
                when *got* lies within the *tolerance* of *expected*. A list of more than eight values gives only its number and range,
                and then *got* is the largest difference found. Where many random cases are compared, the worst of them is shown.

                *How near* says how far the source may be trusted:

                - **seen**: the figure was read in the document itself.
                - **seen second-hand**: it was read in a copy or quotation of the document by somebody else.
                - **from memory**: the document was not opened. The number was derived and computed anew outside the program; only
                  the attribution is unproved.
                - **common practice, no source**: a rule that the trade uses, without a document behind it.
                - **independent computation**: another method in other code, such as a general solver, numeric quadrature or a script.

                %d checks: %s. By chapter:

                %s
                To write the page anew after a check has changed:

                    mvn -q test -Dtest=VerificationDocumentTest -Dstillrail.verification=true

                Without the property the same test only compares: it fails when this page does not list the checks that the tests make.
                *Got* is left out of that comparison, since its last digits may differ between machines.
                """.formatted(records.size(), counts, chapters);
    }

    private static String row(Record record) {
        return List.of(record.subject(), record.expected(), record.got(), record.tolerance(), record.source().citation(),
                        record.source().standing().words(), "`" + record.testClass() + "`").stream()
                .map(VerificationDocument::cell).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("\n", " ");
    }

    /** The rows of a document without what was got, for comparison. */
    static Set<String> claims(String document) {
        return document.lines().filter(line -> line.startsWith("| ") && !HEADING.contains(line)).map(VerificationDocument::claim)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String claim(String row) {
        String[] cells = row.split("(?<!\\\\)\\|");
        cells[GOT] = " ";
        return String.join("|", cells);
    }
}
