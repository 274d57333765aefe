package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.step.FittedBranch;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.LoadStep;
import org.stillrail.electrical.step.StepBudgetException;
import org.stillrail.electrical.step.StepRefusedException;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;
import org.stillrail.web.Computing;
import org.stillrail.web.NoAnswerException;

/** The response of a bank, with its converter or alone, to a load step. */
@Component
class StepCalculation {

    private static final String FROM = "load.fromA";

    private final BankResolver resolver;
    private final Computing computing;

    StepCalculation(BankResolver resolver, Computing computing) {
        this.resolver = resolver;
        this.computing = computing;
    }

    StepAnswer answer(LoadStepRequest request) {
        ResolvedBank resolved = resolver.resolve(request.bank(), request.operatingPoint());
        return computing.within(() -> calculate(resolved, request));
    }

    private static StepAnswer calculate(ResolvedBank resolved, LoadStepRequest request) {
        Bank bank = resolved.interruptibleInTime();
        Converter converter = request.converter() == null ? null : ConverterResolver.resolve(request.converter(), bank);
        StepResult step = solve(new StepRequest(
                bank,
                converter,
                new Load(request.load().fromA(), request.load().toA(), request.load().slewAPerS()),
                request.durationS(),
                request.dutyLimits() == null || request.dutyLimits(),
                request.samples() == null ? StepRequest.DEFAULT_SAMPLES : request.samples(),
                request.settleBandV()));
        List<String> warnings = new ArrayList<>(resolved.warnings());
        double slowestHz = 1 / request.durationS();
        warnings.addAll(bank.warnings(
                slowestHz, converter == null ? slowestHz : Math.max(slowestHz, converter.stage().switchingHz())));
        warnings.addAll(step.warnings());
        return new StepAnswer(
                step.timeS(), step.deviationV(), step.inductorA(), step.undershootV(), step.overshootV(), step.undershootAtS(),
                step.overshootAtS(), step.settledAtS(), step.fitErrorPercent(), warnings);
    }

    private static StepResult solve(StepRequest request) {
        try {
            return LoadStep.of(request, new FittedBranch());
        } catch (StepBudgetException e) {
            throw NoAnswerException.tooMuch(e.getMessage());
        } catch (StepRefusedException e) {
            String field = e.getMessage().startsWith(FROM) ? FROM : "converter";
            throw new BadInputException(field, "is refused: " + e.getMessage());
        } catch (LosslessResonanceException e) {
            throw new BadInputException("bank", e.getMessage());
        }
    }
}
