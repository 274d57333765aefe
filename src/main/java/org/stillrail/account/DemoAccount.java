package org.stillrail.account;

import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * An account of the invented team; the sign-in page of the demo shows all of this.
 *
 * @param token a token for the calculation API, or null
 */
record DemoAccount(String userName, String displayName, Set<Role> roles, String token) {

    /** Published on purpose: these accounts exist only in a demo database, which the application opens only as a demo. */
    static final String PASSWORD = "quiet-rails-demo";

    static final List<DemoAccount> ALL = List.of(
            new DemoAccount("viewer", "Odra Quillmere", Set.of(Role.VIEWER), "demo-viewer"),
            new DemoAccount("engineer", "Tamsel Verring", Set.of(Role.ENGINEER), "demo-engineer"),
            new DemoAccount("librarian", "Ysbrand Lockhollow", Set.of(Role.LIBRARIAN), "demo-librarian"),
            new DemoAccount("reviewer", "Nessa Corvanel", Set.of(Role.REVIEWER), "demo-reviewer"),
            new DemoAccount("administrator", "Hobb Underlane", Set.of(Role.ADMINISTRATOR), "demo-administrator"),
            new DemoAccount("lead", "Piet Lumenhaugh", Set.of(Role.ENGINEER, Role.REVIEWER), null));

    Person person() {
        return new Person(UUID.randomUUID(), userName, displayName, roles, true);
    }

    /** For the sign-in page. */
    public String roleLabels() {
        return RoleLabels.of(roles);
    }
}
