package org.stillrail.web;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.stillrail.document.Revision;

/**
 * What to tell a person whose form was begun at a revision that is no longer the newest. Where only the others changed something,
 * the form takes theirs over, so that saving it does not put the old figures back; where both did, the form keeps what was typed and
 * theirs is shown beside it.
 */
public final class Overtaken {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'");

    /**
     * A field in which the newest revision is not what the person began with or typed.
     *
     * @param taken theirs is in the form now; otherwise the typed one is
     */
    public record Line(String field, String label, String began, String theirs, String mine, boolean taken) {
    }

    private final List<? extends Revision<?>> since;
    private final List<Line> lines;

    private Overtaken(List<? extends Revision<?>> since, List<Line> lines) {
        this.since = since;
        this.lines = List.copyOf(lines);
    }

    /**
     * Compares what was typed with what was saved meanwhile, and carries over into {@code form} what only the others changed.
     *
     * @param form  as it was sent, and free of errors
     * @param began what the form was filled from
     * @param since revisions saved after it, newest first, at least one
     */
    public static <D> Overtaken carryOver(FormShape<D> shape, Form form, D began, List<Revision<D>> since) {
        Side before = Side.of(shape, began);
        Side theirs = Side.of(shape, since.get(0).document());
        Side mine = Side.of(shape, shape.read(form));
        Set<String> fields = new LinkedHashSet<>(theirs.form.names());
        fields.addAll(before.form.names());
        fields.addAll(mine.form.names());
        Map<String, List<String>> groups = fields.stream().collect(Collectors.groupingBy(shape::group, LinkedHashMap::new, Collectors.toList()));
        List<Line> lines = new ArrayList<>();
        groups.forEach((group, members) -> {
            if (!theirs.differs(before, members) || !theirs.differs(mine, members)) {
                return;
            }
            boolean taken = !mine.differs(before, members);
            if (taken) {
                form.replace(field -> shape.group(field).equals(group), theirs.form);
            }
            members.stream().filter(field -> theirs.differs(mine, List.of(field))).forEach(field -> lines.add(new Line(field,
                    theirs.label(field, before, mine), before.words(field), theirs.words(field), mine.words(field), taken)));
        });
        return new Overtaken(since, lines);
    }

    /** Who saved what while the page was open, oldest first. */
    public String who() {
        List<String> saved = new ArrayList<>();
        since.forEach(revision -> saved.add(0, revision.author() + " saved revision " + revision.number() + " at " + MINUTE.format(revision.madeAt())));
        return String.join("; ", saved) + " while this page was open.";
    }

    public int newest() {
        return since.get(0).number();
    }

    public List<Line> lines() {
        return lines;
    }

    public boolean anyTaken() {
        return lines.stream().anyMatch(Line::taken);
    }

    public boolean anyKept() {
        return lines.stream().anyMatch(line -> !line.taken());
    }

    /** What stands beside a field, or null. */
    public String beside(String field) {
        return lines.stream().filter(line -> line.field().equals(field)).findFirst()
                .map(line -> "Revision " + newest() + (line.taken() ? " has changed this; it was: " + line.began() : " has: " + line.theirs()))
                .orElse(null);
    }

    /** A document as its form writes it, so that two ways of typing one figure are no difference. */
    private record Side(FormShape<?> shape, Form form) {

        static <D> Side of(FormShape<D> shape, D document) {
            Form form = shape.fill(document);
            shape.read(form);
            return new Side(shape, form);
        }

        boolean differs(Side other, List<String> fields) {
            return fields.stream().anyMatch(field -> !value(field).equals(other.value(field)));
        }

        String words(String field) {
            String words = shape.words(field, value(field));
            return words.isEmpty() ? "not stated" : words;
        }

        /** A blank field is not always read, so the label may be known to another side only. */
        String label(String field, Side... others) {
            String label = form.label(field);
            for (int i = 0; label == null && i < others.length; i++) {
                label = others[i].form.label(field);
            }
            return label == null ? field : label;
        }

        private String value(String field) {
            return form.isBlank(field) ? "" : form.get(field);
        }
    }
}
