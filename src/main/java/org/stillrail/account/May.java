package org.stillrail.account;

/**
 * Who may do what: one expression for {@code @PreAuthorize} per action. A person with several roles may do what any of them
 * may. Conditions on the data (member of the project, not one's own revision) are checked by the room that owns the data.
 */
public final class May {

    /** Read, compare, export. */
    public static final String READ = "isAuthenticated()";

    private static final String WORKS_WITH_BANKS = "hasAnyRole('ENGINEER', 'LIBRARIAN', 'REVIEWER')";
    private static final String BRINGS_EVIDENCE = "hasAnyRole('ENGINEER', 'LIBRARIAN')";

    public static final String COMMENT = WORKS_WITH_BANKS;
    /** Use the calculation API. */
    public static final String CALCULATE = WORKS_WITH_BANKS;
    /** Compose and save a scratch bank. */
    public static final String SCRATCH = WORKS_WITH_BANKS;
    /** Propose a part or a new revision of one. */
    public static final String PROPOSE_PART = BRINGS_EVIDENCE;
    public static final String IMPORT_SWEEP = BRINGS_EVIDENCE;
    /** Vet, restrict or withdraw a part, choose its model, accept a finding. */
    public static final String VET = "hasRole('LIBRARIAN')";
    /** Make a project, and as its member edit its rails and banks and submit them. */
    public static final String EDIT_PROJECT = "hasRole('ENGINEER')";
    /** Add a member: an engineer who is one, or an administrator where no member can edit the project. */
    public static final String ADD_MEMBER = "hasAnyRole('ENGINEER', 'ADMINISTRATOR')";
    /** Sign, return or recall what someone else wrote. */
    public static final String REVIEW = "hasRole('REVIEWER')";
    /** People, roles, derating rules, settings, anyone's tokens. */
    public static final String ADMINISTER = "hasRole('ADMINISTRATOR')";

    /** Become a member of a project that one takes in. */
    public static final String TAKE_IN_AS_MEMBER = ADMINISTER + " and " + EDIT_PROJECT;

    private May() {}
}
