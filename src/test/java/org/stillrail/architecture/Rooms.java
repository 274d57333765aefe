package org.stillrail.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The order of the rooms, as rules: each room and the rooms it may use. The root package is a parameter so that the same
 * rules can be tried on a planted tree that breaks them.
 */
final class Rooms {

    /** Plain trees: what they may use is listed in full, so a framework is refused. */
    private static final Map<String, List<String>> PLAIN = new LinkedHashMap<>();

    /** The other rooms: what they may use of ours. */
    private static final Map<String, List<String>> ORDER = new LinkedHashMap<>();

    static {
        PLAIN.put("electrical", List.of("java..", "org.ejml.."));
        PLAIN.put("sweepfile", List.of("java..", "org.apache.commons.csv..", "~.electrical.curve.."));

        List<String> below = new ArrayList<>(List.of("electrical", "sweepfile"));
        ORDER.put("document", List.of());
        ORDER.put("web", List.of("electrical", "document"));
        below.addAll(List.of("document", "web"));
        for (String room : List.of("audit", "account", "job", "team", "library")) {
            ORDER.put(room, List.copyOf(below));
            below.add(room);
        }
        // Computes from parts and inline figures alone; nobody uses it.
        ORDER.put("calculation", List.copyOf(below));
        for (String room : List.of("project", "bank", "review", "report")) {
            ORDER.put(room, List.copyOf(below));
            below.add(room);
        }
    }

    private final String root;

    Rooms(String root) {
        this.root = root;
    }

    List<ArchRule> rules() {
        List<ArchRule> rules = new ArrayList<>();
        PLAIN.forEach((room, allowed) -> rules.add(plain(room, allowed)));
        ORDER.forEach((room, lower) -> rules.add(ordered(room, lower)));
        rules.add(noStrays());
        return rules;
    }

    private ArchRule plain(String room, List<String> allowed) {
        List<String> packages = new ArrayList<>(List.of(in(room)));
        allowed.forEach(name -> packages.add(name.replace("~", root)));
        return classes().that().resideInAPackage(in(room))
                .should().onlyDependOnClassesThat().resideInAnyPackage(packages.toArray(String[]::new))
                .allowEmptyShould(true)
                .as("room '" + room + "' is plain Java and uses only " + String.join(", ", allowed));
    }

    private ArchRule ordered(String room, List<String> lower) {
        String[] packages = Stream.concat(Stream.of(room), lower.stream()).map(this::in).toArray(String[]::new);
        DescribedPredicate<JavaClass> notOurs = resideOutsideOfPackage(root + "..");
        return classes().that().resideInAPackage(in(room))
                .should().onlyDependOnClassesThat(notOurs.or(resideInAnyPackage(packages)))
                .allowEmptyShould(true)
                .as("room '" + room + "' uses of ours only " + lower);
    }

    /** A new package has to be given its place here first. */
    private ArchRule noStrays() {
        String[] known = Stream.concat(
                        Stream.of(root), Stream.concat(PLAIN.keySet().stream(), ORDER.keySet().stream()).map(this::in))
                .toArray(String[]::new);
        return classes().should().resideInAnyPackage(known).as("every class is in a known room");
    }

    private String in(String room) {
        return root + "." + room + "..";
    }
}
