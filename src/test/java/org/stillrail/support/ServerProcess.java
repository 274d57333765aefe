package org.stillrail.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillrail.StillrailApplication;

/** The application as a process of its own on a free port, with the classes of this test run. It can be killed. */
public final class ServerProcess implements AutoCloseable {

    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final long PATIENCE_NS = TimeUnit.MINUTES.toNanos(4);

    private final Process process;
    private final Path output;
    private final int port;

    private ServerProcess(Process process, Path output) {
        this.process = process;
        this.output = output;
        this.port = awaitPort();
    }

    /** @param arguments such as {@code --spring.profiles.active=demo} */
    public static ServerProcess start(Path dataDirectory, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), StillrailApplication.class.getName(),
                "--server.port=0", "--stillrail.data-directory=" + dataDirectory, "--spring.main.banner-mode=off",
                "--logging.level.org.springframework.boot.tomcat=info"));
        command.addAll(List.of(arguments));
        try {
            Path output = Files.createTempFile("server", ".txt");
            return new ServerProcess(new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile()).start(), output);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int port() {
        return port;
    }

    /** As a power cut would: no shutdown hook runs and no file is closed (SIGKILL where there are signals). */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private int awaitPort() {
        long end = System.nanoTime() + PATIENCE_NS;
        try {
            while (process.isAlive() && System.nanoTime() < end) {
                Matcher found = PORT.matcher(Files.readString(output));
                if (found.find()) {
                    return Integer.parseInt(found.group(1));
                }
                Thread.sleep(100);
            }
            process.destroyForcibly();
            throw new IllegalStateException("The server did not start:\n" + Files.readString(output));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while the server started", e);
        }
    }
}
