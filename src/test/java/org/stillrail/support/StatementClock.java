package org.stillrail.support;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/** Counts and times what the application asks its database, by laying itself before the data source. */
public final class StatementClock implements BeanPostProcessor {

    private final AtomicLong count = new AtomicLong();
    private final AtomicLong nanos = new AtomicLong();
    private final Map<String, AtomicLong> bySql = new ConcurrentHashMap<>();

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        return bean instanceof DataSource dataSource ? new Timed(dataSource) : bean;
    }

    public void reset() {
        count.set(0);
        nanos.set(0);
        bySql.clear();
    }

    public long count() {
        return count.get();
    }

    public double milliseconds() {
        return nanos.get() / 1e6;
    }

    /** The statement that took the most time since the reset, on one line. */
    public String slowest() {
        return bySql.entrySet().stream().max(Map.Entry.comparingByValue((a, b) -> Long.compare(a.get(), b.get())))
                .map(entry -> entry.getKey().replaceAll("\\s+", " ").strip()).orElse("");
    }

    private final class Timed extends DelegatingDataSource {

        Timed(DataSource target) {
            super(target);
        }

        @Override
        public Connection getConnection() throws SQLException {
            Connection connection = super.getConnection();
            return proxy(Connection.class, (proxy, method, arguments) -> {
                Object result = call(connection, method, arguments);
                return result instanceof PreparedStatement statement ? timed(statement, (String) arguments[0]) : result;
            });
        }
    }

    private PreparedStatement timed(PreparedStatement statement, String sql) {
        return proxy(PreparedStatement.class, (proxy, method, arguments) -> {
            if (!method.getName().startsWith("execute")) {
                return call(statement, method, arguments);
            }
            long start = System.nanoTime();
            try {
                return call(statement, method, arguments);
            } finally {
                long took = System.nanoTime() - start;
                count.incrementAndGet();
                nanos.addAndGet(took);
                bySql.computeIfAbsent(sql, text -> new AtomicLong()).addAndGet(took);
            }
        });
    }

    private static <T> T proxy(Class<T> type, InvocationHandler handler) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
    }

    private static Object call(Object target, Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
