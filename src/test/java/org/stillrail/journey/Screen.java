package org.stillrail.journey;

import java.util.List;
import java.util.function.Consumer;

/**
 * A page of the demo as somebody of the team sees it: what is photographed for the docs and checked for accessibility.
 *
 * @param name    of the picture, without its ending
 * @param account of the demo, or null for nobody
 * @param way     from the first page to this one
 */
record Screen(String name, String account, Consumer<Visitor> way) {

    static final List<Screen> ALL = List.of(
            new Screen("sign-in", null, visitor -> visitor.open("/sign-in")),
            new Screen("library", "engineer", visitor -> visitor.open("/library")),
            new Screen("part", "librarian", visitor -> visitor.openPart("HERON-470U-25")),
            new Screen("part-new", "engineer", visitor -> visitor.open("/library/parts/new")),
            new Screen("part-revise", "librarian", visitor -> {
                visitor.openPart("HERON-470U-25");
                visitor.follow("Correct the figures");
            }),
            new Screen("part-differences", "viewer", visitor -> {
                visitor.openPart("HERON-470U-25");
                visitor.openBelow("/revisions/2/differences");
            }),
            new Screen("part-effects", "librarian", visitor -> {
                visitor.openPart("HERON-470U-25");
                visitor.openBelow("/effects");
            }),
            new Screen("sweep", "viewer", visitor -> {
                visitor.openPart("HERON-470U-25");
                visitor.follow("heron-470u-25-a.s2p");
            }),
            new Screen("sweep-import", "librarian", visitor -> SweepImportPage.of("GOOSE-1F-5V5", visitor)
                    .chooseFile("goose-1f-5v5-a.txt", DemoFiles.sweep("goose-1f-5v5-a.txt"))),
            new Screen("projects", "engineer", visitor -> visitor.open("/projects")),
            new Screen("project", "engineer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Tarn");
            }),
            new Screen("project-record", "viewer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Tarn");
                visitor.follow("The record of this project");
            }),
            new Screen("rail", "engineer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Logic 5V0");
            }),
            new Screen("rail-revise", "engineer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Logic 5V0");
                visitor.follow("Change what is asked");
            }),
            new Screen("bank-bad", "viewer", visitor -> visitor.openBank("One big, one tiny")),
            new Screen("bank-good", "engineer", visitor -> visitor.openBank("Electrolytic with ceramics")),
            new Screen("bank-two-nodes", "engineer", visitor -> visitor.openBank("Ceramics at the load")),
            new Screen("spread", "viewer", visitor -> {
                visitor.openBank("Electrolytic with ceramics");
                visitor.follow("How does it spread?");
            }),
            new Screen("bench", "engineer", visitor -> {
                visitor.openBank("Electrolytic with ceramics");
                visitor.follow("Prediction against the bench");
            }),
            new Screen("bench-sheet", "engineer", visitor -> {
                visitor.openBank("Electrolytic with ceramics");
                visitor.follow("bench sheet to print");
            }),
            new Screen("fixtures", "engineer", visitor -> visitor.open("/library/fixtures")),
            new Screen("bank-new", "engineer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Logic 5V0");
                visitor.follow("Compose a bank");
            }),
            new Screen("prior-designs", "engineer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Logic 5V0");
                visitor.follow("Prior designs");
            }),
            new Screen("compare", "viewer", visitor -> {
                visitor.open("/projects");
                visitor.follow("Logic 5V0");
                visitor.field("Compare One big, one tiny").check();
                visitor.field("Compare Electrolytic with ceramics").check();
                visitor.press("Compare the chosen");
            }),
            new Screen("scratch", "engineer", visitor -> visitor.open("/scratch")),
            new Screen("review-submit", "engineer", visitor -> visitor.openBank("Tantalum pair")),
            new Screen("review-sign", "reviewer", visitor -> visitor.openBank("Polymer beside the ceramics")),
            new Screen("snapshot", "viewer", visitor -> {
                visitor.openBank("Hybrid for the cold");
                visitor.follow("Snapshot of what was submitted");
            }),
            new Screen("search", "viewer", visitor -> visitor.open("/find?q=ceramics")),
            new Screen("method", "viewer", visitor -> visitor.open("/method")),
            new Screen("verification", "viewer", visitor -> visitor.open("/verification")),
            new Screen("waiting", "reviewer", visitor -> visitor.open("/waiting")),
            new Screen("settings", "administrator", visitor -> visitor.open("/settings")),
            new Screen("record", "administrator", visitor -> visitor.open("/audit")),
            new Screen("record-check", "administrator", visitor -> visitor.open("/audit/check")),
            new Screen("people", "administrator", visitor -> visitor.open("/people")),
            new Screen("person", "administrator", visitor -> {
                visitor.open("/people");
                visitor.follow("Tamsel Verring");
            }),
            new Screen("person-new", "administrator", visitor -> visitor.open("/people/new")),
            new Screen("account", "engineer", visitor -> visitor.open("/account")),
            new Screen("password", "engineer", visitor -> visitor.open("/account/password")),
            new Screen("not-found", "viewer", visitor -> {
                visitor.expectStatus(404);
                visitor.open("/no-such-page");
            }));

    /** Pages of many windows, of which a picture holds the first. */
    boolean isLong() {
        return name.equals("method") || name.equals("verification") || name.equals("record");
    }

    void visit(Visitor visitor) {
        if (account != null) {
            visitor.signInAs(account);
        }
        way.accept(visitor);
        visitor.rests();
    }

    @Override
    public String toString() {
        return name;
    }
}
