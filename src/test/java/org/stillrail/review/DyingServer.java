package org.stillrail.review;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.datasource.DelegatingDataSource;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.stillrail.StillrailApplication;
import org.stillrail.account.CurrentPerson;

/**
 * A server of its own that approves a revision and kills itself in the middle of it, as a power cut would: no shutdown hook
 * runs and no connection is closed. Arguments: URL of the database, id of the revision, SHA-256 of its snapshot, user name of
 * the signer, and the moment: the beginning of the statement that is not reached, or one of the two moments round the commit.
 */
final class DyingServer {

    static final int KILLED = 137;
    static final String BEFORE_COMMIT = "before-commit";
    static final String AFTER_COMMIT = "after-commit";

    private static volatile String moment;

    private DyingServer() {
    }

    public static void main(String[] arguments) {
        try (ConfigurableApplicationContext server = new SpringApplicationBuilder(StillrailApplication.class, Wiring.class)
                .web(WebApplicationType.NONE)
                .lazyInitialization(true)
                .run("--spring.datasource.url=" + arguments[0], "--spring.main.banner-mode=off")) {
            ReviewWriter writer = server.getBean(ReviewWriter.class);
            CurrentPerson signer = (CurrentPerson) server.getBean(UserDetailsService.class).loadUserByUsername(arguments[3]);
            moment = arguments[4];
            writer.approve(UUID.fromString(arguments[1]), arguments[2], "Signed by a server that dies.", signer,
                    OffsetDateTime.of(2031, 3, 4, 5, 6, 7, 0, ZoneOffset.UTC));
        }
    }

    private static void reached(String now) {
        if (moment != null && now.strip().toLowerCase(Locale.ROOT).startsWith(moment)) {
            Runtime.getRuntime().halt(KILLED);
        }
    }

    /** Puts the watch on every connection. */
    @Configuration(proxyBeanMethods = false)
    static class Wiring {

        @Bean
        static BeanPostProcessor watch() {
            return new BeanPostProcessor() {
                @Override
                public Object postProcessAfterInitialization(Object bean, String name) {
                    return bean instanceof DataSource source ? new Watched(source) : bean;
                }
            };
        }
    }

    private static final class Watched extends DelegatingDataSource {

        Watched(DataSource target) {
            super(target);
        }

        @Override
        public Connection getConnection() throws SQLException {
            Connection target = super.getConnection();
            return (Connection) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {Connection.class}, (proxy, method, given) -> {
                if (method.getName().equals("prepareStatement")) {
                    reached((String) given[0]);
                }
                boolean commit = method.getName().equals("commit");
                if (commit) {
                    reached(BEFORE_COMMIT);
                }
                try {
                    Object result = method.invoke(target, given);
                    if (commit) {
                        reached(AFTER_COMMIT);
                    }
                    return result;
                } catch (InvocationTargetException e) {
                    throw e.getCause();
                }
            });
        }
    }
}
