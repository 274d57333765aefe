package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.web.Computing;

/** Loop gain, margins and closed-loop output impedance of a converter on a bank. */
@Component
class LoopCalculation {

    private final BankResolver resolver;
    private final Computing computing;

    LoopCalculation(BankResolver resolver, Computing computing) {
        this.resolver = resolver;
        this.computing = computing;
    }

    LoopAnswer answer(LoopRequest request) {
        ResolvedBank resolved = resolver.resolve(request.bank(), request.operatingPoint());
        return computing.within(() -> calculate(resolved, request.converter(), request.grid().toGrid()));
    }

    private static LoopAnswer calculate(ResolvedBank resolved, ConverterInput converter, FrequencyGrid grid) {
        Bank bank = resolved.interruptible();
        LoopResult loop;
        try {
            loop = Loop.of(bank, ConverterResolver.resolve(converter, bank), grid);
        } catch (LosslessResonanceException e) {
            throw new BadInputException("grid", e.getMessage());
        }
        List<String> warnings = new ArrayList<>(resolved.warnings());
        warnings.addAll(bank.warnings(grid.startHz(), grid.stopHz()));
        warnings.addAll(loop.warnings());
        Compensator compensator = loop.compensator();
        return new LoopAnswer(
                grid.toArray(), loop.gainDb(), loop.phaseDeg(), loop.closedImpedanceOhm(), loop.phaseMarginDeg(),
                loop.crossoverHz(), loop.gainMarginDb(), loop.sensitivityPeak(), loop.stable(), loop.esrAtCrossoverOhm(),
                loop.esrAtSwitchingOhm(),
                new LoopAnswer.CompensatorFound(compensator.gain(), compensator.zerosHz(), compensator.polesHz()),
                warnings);
    }
}
