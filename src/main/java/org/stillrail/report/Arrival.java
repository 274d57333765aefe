package org.stillrail.report;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A project's file held against what is here: what of it is new, what stands against it, and what somebody should know beforehand.
 *
 * @param fresh     rows that are not here yet, as values, by table in the order in which they can be inserted
 * @param conflicts why nothing can be stored, a sentence each; empty where all can
 * @param notes     what becomes different from the file, a sentence each
 */
record Arrival(Map<ProjectTable, List<Map<String, Object>>> fresh, List<LaterRevisions> later, List<String> conflicts, List<String> notes) {

    /** Id of the project, or null where the file brings none that is new. */
    UUID projectId() {
        List<Map<String, Object>> projects = fresh.get(ProjectTable.PROJECT);
        return projects.size() == 1 ? (UUID) projects.get(0).get("id") : null;
    }

    /** Its name at home. */
    public String projectName() {
        return (String) fresh.get(ProjectTable.PROJECT).get(0).get("name");
    }

    private String count(ProjectTable table, String one, String many) {
        int count = fresh.get(table).size();
        return count + " " + (count == 1 ? one : many);
    }

    /** What would be stored, in words. */
    public List<String> counts() {
        return List.of(count(ProjectTable.RAIL, "rail", "rails"), count(ProjectTable.BANK, "bank", "banks") + " with "
                        + count(ProjectTable.BANK_REVISION, "revision", "revisions"),
                count(ProjectTable.REVIEW_SIGNATURE, "signature", "signatures"), count(ProjectTable.BENCH_RECORD, "bench record", "bench records"),
                count(ProjectTable.PART, "part", "parts") + " that " + (fresh.get(ProjectTable.PART).size() == 1 ? "is" : "are") + " not here yet",
                count(ProjectTable.SWEEP, "sweep", "sweeps"), count(ProjectTable.FIXTURE_SWEEP, "fixture", "fixtures"),
                count(ProjectTable.ORIGIN_AUDIT_EVENT, "line", "lines") + " of the origin's record");
    }
}
