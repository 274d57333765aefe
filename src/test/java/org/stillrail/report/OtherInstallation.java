package org.stillrail.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.UUID;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.stillrail.StillrailApplication;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestDatabase;

/**
 * A second installation, on PostgreSQL, to bring projects from and to.
 *
 * @param administrator who has every other role as well
 */
record OtherInstallation(ConfigurableApplicationContext context, CurrentPerson administrator) implements AutoCloseable {

    static OtherInstallation start() {
        ConfigurableApplicationContext context = new SpringApplicationBuilder(StillrailApplication.class).run(
                "--spring.datasource.url=" + TestDatabase.emptyPostgresUrl(), "--server.port=0");
        return new OtherInstallation(context, context.getBean(Accounts.class)
                .add("admin", "Admin", Set.of(Role.values()), "four plain words here", "tests"));
    }

    static ProjectFile.Received received(String file) throws IOException {
        return ProjectFile.receive(new ByteArrayResource(file.getBytes(StandardCharsets.UTF_8)));
    }

    <T> T bean(Class<T> type) {
        return context.getBean(type);
    }

    String export(UUID projectId) {
        return bean(ProjectFiles.class).write(projectId);
    }

    Arrival look(String file) throws IOException {
        ProjectFile.Received received = received(file);
        return TeamBench.as(administrator, () -> bean(ProjectFiles.class).look(received.file()));
    }

    UUID take(String file, String name) throws IOException {
        ProjectFile.Received received = received(file);
        return TeamBench.as(administrator, () -> bean(ProjectFiles.class).take(received, name, false, administrator));
    }

    @Override
    public void close() {
        context.close();
    }
}
