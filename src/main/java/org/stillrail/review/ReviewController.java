package org.stillrail.review;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.web.Form;

/** The steps of a revision through review, one form each. A form with errors comes back with what was typed. */
@Controller
@RequestMapping("/banks/{bankId}/revisions/{number}")
class ReviewController {

    private final Banks banks;
    private final Reviews reviews;
    private final ReviewRules rules;
    private final ReviewPanel panel;

    ReviewController(Banks banks, Reviews reviews, ReviewRules rules, ReviewPanel panel) {
        this.banks = banks;
        this.reviews = reviews;
        this.rules = rules;
        this.panel = panel;
    }

    @PostMapping("/submit")
    @PreAuthorize(May.EDIT_PROJECT)
    ModelAndView submit(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        rules.require(ReviewStep.SUBMITTED, bank, person);
        Form form = Form.of(parameters);
        String remark = form.text("submitRemark", "The comment", false);
        Evaluation evaluation;
        try {
            evaluation = reviews.evaluate(bank);
        } catch (EvaluationRefusedException e) {
            form.errors().add("", e.getMessage() + ".");
            return again(bank, form, person, null);
        }
        List<Concession> concessions = SubmissionForm.read(form, evaluation.verdicts(), panel.members(bank), reviews.now().toLocalDate());
        if (!form.errors().none()) {
            return again(bank, form, person, evaluation);
        }
        reviews.submit(bank, evaluation, concessions, remark, person);
        return done(bank, "Revision " + number + " is submitted and waits for a reviewer.", redirect);
    }

    @PostMapping("/return")
    @PreAuthorize(May.REVIEW)
    ModelAndView giveBack(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        rules.require(ReviewStep.RETURNED, bank, person);
        Form form = Form.of(parameters);
        String remark = form.text("returnRemark", "What has to change", true);
        if (!form.errors().none()) {
            return again(bank, form, person, null);
        }
        reviews.giveBack(bank, remark, person);
        return done(bank, "Revision " + number + " is returned.", redirect);
    }

    @PostMapping("/approve")
    @PreAuthorize(May.REVIEW)
    ModelAndView approve(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        rules.require(ReviewStep.APPROVED, bank, person);
        Form form = Form.of(parameters);
        String remark = form.text("approveRemark", "The comment", false);
        String sha256 = form.text("sha256", "The SHA-256 of what is signed", true);
        if (form.isBlank("password")) {
            form.errors().add("password", "Your password is missing");
        }
        if (form.errors().none() && !reviews.approve(bank, sha256, form.get("password"), remark, person)) {
            form.errors().add("password", "This is not your password, or there were too many wrong ones: then wait a minute");
        }
        if (!form.errors().none()) {
            return again(bank, form, person, null);
        }
        boolean approved = banks.require(bankId, number).state() == BankState.APPROVED;
        return done(bank, "Revision " + number + (approved ? " is approved" : " waits for the second signature")
                + "; your signature is bound to its snapshot.", redirect);
    }

    @PostMapping("/recall")
    @PreAuthorize(May.REVIEW)
    ModelAndView recall(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        rules.require(ReviewStep.RECALLED, bank, person);
        Form form = Form.of(parameters);
        String reason = form.text("recallReason", "The reason", true);
        if (!form.errors().none()) {
            return again(bank, form, person, null);
        }
        reviews.recall(bank, reason, person);
        return done(bank, "Revision " + number + " is recalled.", redirect);
    }

    @PostMapping("/comments")
    @PreAuthorize(May.COMMENT)
    ModelAndView comment(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        if (bank.isScratch()) {
            throw new WrongStepException("A scratch bank is its owner's alone and has no comments.");
        }
        Form form = Form.of(parameters);
        String remark = form.text("commentRemark", "The comment", true);
        if (!form.errors().none()) {
            return again(bank, form, person, null);
        }
        String about = form.isBlank("commentAbout") ? "" : form.get("commentAbout");
        Optional<CommentSubject> subject = CommentSubject.of(bank.document(), evaluated(bank)).stream()
                .filter(each -> each.anchor().equals(about)).findFirst();
        if (subject.isEmpty()) {
            form.errors().add("commentAbout", "Choose one of the list");
            return again(bank, form, person, null);
        }
        reviews.comment(bank, subject.get(), remark, person);
        return done(bank, "Your comment stands beside revision " + number + ".", redirect);
    }

    /** Null where the physics refuses the bank; there is no verdict then that a comment could be tied to. */
    private Evaluation evaluated(Bank bank) {
        try {
            return reviews.evaluate(bank);
        } catch (EvaluationRefusedException e) {
            return null;
        }
    }

    private ModelAndView again(Bank bank, Form form, CurrentPerson person, Evaluation evaluation) {
        return new ModelAndView("review/again", HttpStatus.UNPROCESSABLE_CONTENT)
                .addObject("bank", bank)
                .addObject("review", panel.view(bank, person, form, evaluation));
    }

    private static ModelAndView done(Bank bank, String notice, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        return new ModelAndView("redirect:/banks/" + bank.id() + (bank.isLatest() ? "" : "/revisions/" + bank.revision().number()));
    }
}
