package org.stillrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.mock.web.MockHttpServletRequest;
import org.stillrail.account.Accounts;
import org.stillrail.support.AppTest;
import org.stillrail.support.PageClient;
import org.stillrail.support.TestPeople;

/** A project's file may be larger than others, and a refusal says how large. */
@AppTest
class UploadLimitsTest {

    private static final byte[] OVER_20_MIB = new byte[(20 << 20) + 1];

    @LocalServerPort
    private int port;

    @Autowired
    private Accounts accounts;

    @Autowired
    private UploadLimits limits;

    private static MockHttpServletRequest to(String path) {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", path);
        request.setServletPath(path);
        return request;
    }

    @Test
    void onlyTheProjectsFileMayBeLarger() throws Exception {
        Arrays.fill(OVER_20_MIB, (byte) ' ');
        PageClient client = new PageClient(port).signIn(TestPeople.ofEveryRole(accounts, "Uploads").userName(), TestPeople.PASSWORD);
        assertThat(client.post("/projects/import", Map.of(), "p.json", OVER_20_MIB).body()).as("read and found to be no project").contains("Not a readable ProjectFile");
        assertThatThrownBy(() -> client.post("/library/bulk/preview", Map.of(), "p.csv", OVER_20_MIB)).hasMessageContaining("answered 413");
        assertThat(client.post("/library/bulk/preview", Map.of(), "p.csv", Arrays.copyOf(OVER_20_MIB, 1 << 20)).statusCode()).isEqualTo(200);
    }

    @Test
    void theRefusalNamesTheLimitOfThePath() {
        assertThat(limits.refusal(to("/library/bulk/preview"))).isEqualTo("The file is larger than 20 MiB, the most that is taken. Nothing was stored.");
        assertThat(limits.refusal(to("/projects/import"))).contains("The project's file is larger than 200 MiB", "max-file-size", "Nothing was stored");
        assertThat(limits.all(to("/library/bulk/preview"))).isEqualTo(100 << 20);
        assertThat(limits.file(to("/projects/import"))).isEqualTo(200 << 20);
    }
}
