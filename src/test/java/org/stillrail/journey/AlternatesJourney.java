package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** An engineer names what else may be fitted and which places stay empty; the bill of materials says both. */
@Browsing
class AlternatesJourney {

    private static final String ALTERNATES = "May be fitted instead";

    @Test
    void namesAlternatesAndEmptyPlaces(Visitor engineer) {
        engineer.signInAs("engineer");
        BankPage page = BankPage.scratch(engineer);
        page.addBranch();
        page.choosePart(2, "SPARROW-22U-10");
        page.type(2, "Name", "ceramics");
        page.branch(2).getByText("Alternates and empty places").click();
        page.leaveWith(2, ALTERNATES, "NOSUCH-1");
        assertThat(page.problems()).contains("Branch 2").contains("NOSUCH-1");
        page.leaveWith(2, ALTERNATES, "SPARROW-47U-6V3");
        assertThat(page.problems()).contains("SPARROW-47U-6V3 is proposed");
        page.leaveWith(2, ALTERNATES, "SPARROW-22U-10");
        assertThat(page.problems()).contains("stands here already");
        page.pick(2, ALTERNATES, "SPARROW-10U-50");
        page.add(2, ALTERNATES, "SPARROW-10U-25");
        page.type(2, "Empty places", "two");
        assertThat(page.problems()).contains("empty places").contains("two");
        page.type(2, "Empty places", "2");

        engineer.fill("Name of the bank", "Either of three");
        engineer.press("Save the bank");
        engineer.seesHeading("Either of three");
        assertThat(page.field(2, ALTERNATES).inputValue()).isEqualTo("SPARROW-10U-50, SPARROW-10U-25");
        assertThat(page.field(2, "Empty places").inputValue()).isEqualTo("2");

        String bill = engineer.page().request().get(engineer.page().url() + "/revisions/1/bom.csv").text();
        assertThat(bill.lines().findFirst().orElseThrow()).startsWith("branch,quantity,unfitted places,part number,alternates,");
        assertThat(bill).contains("ceramics,1,2,SPARROW-22U-10,\"SPARROW-10U-50, SPARROW-10U-25\",");
    }
}
