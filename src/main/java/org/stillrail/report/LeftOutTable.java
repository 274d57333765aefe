package org.stillrail.report;

import java.util.Locale;

/** The tables that a project's file leaves out, each with the reason. */
enum LeftOutTable {

    INSTALLATION("says what this one database is for"),
    SETUP_CODE("makes the first administrator of this one installation"),
    PERSON("the names of everyone in the file are in its list of people; accounts and passwords stay where they are"),
    PERSON_ROLE("what somebody may do is each installation's own"),
    API_TOKEN("a secret of one installation"),
    SPRING_SESSION("who is signed in"),
    SPRING_SESSION_ATTRIBUTES("who is signed in"),
    AUDIT_EVENT("the lines about the project are in the file among those of its origins, as origin_audit_event"),
    AUDIT_HEAD("the end of this installation's own chain"),
    CONVERTER_PRESET("a help to fill in a rail, which then holds the figures itself"),
    COLUMN_MAPPING("a help to read text files; each sweep says how its columns were read"),
    TEAM_SETTINGS_REVISION("each team's own; a snapshot holds the rules that it was judged by");

    private final String reason;

    LeftOutTable(String reason) {
        this.reason = reason;
    }

    String sqlName() {
        return name().toLowerCase(Locale.ROOT);
    }

    String reason() {
        return reason;
    }
}
