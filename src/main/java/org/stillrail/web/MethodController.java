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

/** The method as a page: every equation with its source, an anchor at every heading. */
@Controller
class MethodController {

    private final String html;

    MethodController() throws IOException {
        List<Extension> extensions = List.of(TablesExtension.create(), HeadingAnchorExtension.create());
        String text = new ClassPathResource("docs/method.md").getContentAsString(StandardCharsets.UTF_8);
        this.html = HtmlRenderer.builder().extensions(extensions).escapeHtml(true).build()
                .render(Parser.builder().extensions(extensions).build().parse(text));
    }

    @GetMapping("/method")
    String show(Model model) {
        model.addAttribute("html", html);
        return "method";
    }
}
