package org.stillrail.review;

import java.io.PrintStream;
import java.util.List;
import java.util.UUID;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.ExitCodeGenerator;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.ApplicationContext;
import org.springframework.stereotype.Component;

/**
 * {@code --stillrail.command=verify} verifies the record and every snapshot, {@code --stillrail.command=recompute} with
 * {@code --stillrail.snapshot=ID} one snapshot; prints what was found and ends the program, with 0 where all is sound, else 1.
 */
@Component
@ConditionalOnProperty("stillrail.command")
class VerifyCommand implements ApplicationRunner {

    private final ApplicationContext context;
    private final InstallationCheck check;

    VerifyCommand(ApplicationContext context, InstallationCheck check) {
        this.context = context;
        this.check = check;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        int code = run(context.getEnvironment().getProperty("stillrail.command", ""), context.getEnvironment().getProperty("stillrail.snapshot"),
                System.out);
        System.exit(SpringApplication.exit(context, (ExitCodeGenerator) () -> code));
    }

    /** @return the exit code: 0 sound, 1 not, 2 not a command */
    int run(String command, String snapshot, PrintStream out) {
        if (command.equals("verify")) {
            InstallationCheck.Findings found = check.run(true);
            out.println("Record: " + found.chain().lines() + " lines, newest hash " + found.chain().headHash());
            found.chain().broken().ifPresent(broken -> out.println("Broken at line " + broken.sequenceNumber() + ": " + broken.reason()));
            out.println("Records of origins: " + found.originLines() + " lines, each held against its hash");
            out.println("Snapshots: " + found.snapshots() + ", each hashed and worked out again; signatures: " + found.signatures());
            found.faults().forEach(out::println);
            out.println(found.sound() ? "All sound." : "NOT sound.");
            return found.sound() ? 0 : 1;
        }
        if (command.equals("recompute") && snapshot != null) {
            try {
                List<String> faults = check.recompute(UUID.fromString(snapshot));
                faults.forEach(out::println);
                out.println(faults.isEmpty() ? "The snapshot gives the figures that were stored." : "NOT the same.");
                return faults.isEmpty() ? 0 : 1;
            } catch (IllegalArgumentException e) {
                out.println("'" + snapshot + "' is not the id of a snapshot.");
                return 2;
            }
        }
        out.println("Commands: --stillrail.command=verify, or --stillrail.command=recompute --stillrail.snapshot=ID");
        return 2;
    }
}
