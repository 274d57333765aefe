package org.stillrail.account;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says why the start was refused, without a stack trace. */
class WrongInstallationFailureAnalyzer extends AbstractFailureAnalyzer<WrongInstallationException> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, WrongInstallationException cause) {
        return new FailureAnalysis(cause.getMessage(), cause.action(), cause);
    }
}
