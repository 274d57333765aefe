package org.stillrail.demo;

import java.util.stream.Collectors;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.stillrail.StillrailApplication;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;

/** Prints the verdicts on every bank of the demo, for whoever changes its story: {@code java ... DemoVerdicts}. */
public final class DemoVerdicts {

    private DemoVerdicts() {
    }

    public static void main(String[] args) {
        try (ConfigurableApplicationContext context = SpringApplication.run(StillrailApplication.class, args)) {
            Projects projects = context.getBean(Projects.class);
            Banks banks = context.getBean(Banks.class);
            BankInputs inputs = context.getBean(BankInputs.class);
            for (Project project : projects.all()) {
                for (Rail rail : projects.railsOf(project.id())) {
                    for (Bank bank : banks.ofRail(rail.id())) {
                        banks.history(bank.id()).forEach(revision -> print(rail, banks.require(bank.id(), revision.number()), inputs));
                    }
                }
            }
        }
    }

    private static void print(Rail rail, Bank bank, BankInputs inputs) {
        long start = System.nanoTime();
        Evaluation evaluation = Evaluation.evaluate(inputs.of(bank.document()));
        long ms = (System.nanoTime() - start) / 1_000_000;
        System.out.println(rail.name() + " / " + bank.name() + " " + bank.revision().number() + " (" + bank.state().label() + ", " + evaluation.corners().size() + " corners, "
                + ms + " ms)");
        System.out.println(evaluation.verdicts().stream()
                .filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED)
                .map(verdict -> "    " + verdict.outcome().label() + "  " + verdict.sentence())
                .collect(Collectors.joining("\n")));
    }
}
