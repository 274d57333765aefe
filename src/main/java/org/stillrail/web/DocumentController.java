package org.stillrail.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The project's own documents as pages, an anchor at every heading: how figures come about, and what they were checked against. */
@Controller
class DocumentController {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create(), HeadingAnchorExtension.create());

    private final String method;
    private final String verification;

    DocumentController() throws IOException {
        method = html("docs/method.md");
        verification = html("docs/verification.md");
    }

    @GetMapping("/method")
    String method(Model model) {
        return page(model, "Method", method);
    }

    @GetMapping("/verification")
    String verification(Model model) {
        return page(model, "Verification", verification);
    }

    private static String page(Model model, String title, String html) {
        model.addAttribute("title", title);
        model.addAttribute("html", html);
        return "document";
    }

    /** A link from one document to the other is a link between files in the repository and between pages here. */
    private static String html(String file) throws IOException {
        String text = new ClassPathResource(file).getContentAsString(StandardCharsets.UTF_8);
        return HtmlRenderer.builder().extensions(EXTENSIONS).escapeHtml(true).build()
                .render(Parser.builder().extensions(EXTENSIONS).build().parse(text))
                .replaceAll("href=\"(method|verification)\\.md", "href=\"$1");
    }
}
