package org.stillrail.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.web.util.HtmlUtils;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import org.thymeleaf.templateresolver.StringTemplateResolver;

class ChartFragmentsTest {

    /** A name as a person might type it, with everything that could end an element or be taken for a template's expression. */
    private static final String HOSTILE =
            "{\"label\":\"</div></script><script>alert(1)</script> [[${7*7}]] & 'x'\",\"y\":[[1,2],[3,4]]}";

    private final SpringTemplateEngine engine = new SpringTemplateEngine();

    @BeforeEach
    void resolveTheRealTemplates() {
        ClassLoaderTemplateResolver files = new ClassLoaderTemplateResolver();
        files.setPrefix("templates/");
        files.setSuffix(".html");
        files.setCharacterEncoding("UTF-8");
        files.setOrder(1);
        files.setResolvablePatterns(Set.of("charts"));
        StringTemplateResolver strings = new StringTemplateResolver();
        strings.setOrder(2);
        engine.addTemplateResolver(files);
        engine.addTemplateResolver(strings);
    }

    @Test
    void dataReachTheBrowserUnchangedWhateverTheyHold() {
        String html = render("<figure th:replace=\"~{charts :: chart('impedance', 'Impedance', ${json})}\"></figure>", HOSTILE);

        assertEquals(HOSTILE, dataOf(html, "impedance"));
        assertFalse(html.contains("<script"), html);
    }

    @Test
    void aReplyCarriesTheSameDataToTheSameElement() {
        String html = render("<div th:replace=\"~{charts :: data('impedance', ${json})}\"></div>", HOSTILE);

        assertEquals(HOSTILE, dataOf(html, "impedance"));
        assertTrue(html.contains("hx-swap-oob=\"true\""), html);
    }

    @Test
    void aFigureInAPageIsNotTakenOutOfItByASwap() {
        String html = render("<figure th:replace=\"~{charts :: sizedChart('esr', 'ESR', ${json}, 'short')}\"></figure>", "{}");

        assertFalse(html.contains("hx-swap-oob"), html);
        assertTrue(html.contains("data-size=\"short\""), html);
    }

    @Test
    void ribbonAndRulerKeepTheirData() {
        assertEquals(HOSTILE, dataOf(render(
                "<figure th:replace=\"~{charts :: ribbon('ribbon', 'Carriers', 'impedance', ${json})}\"></figure>", HOSTILE), "ribbon"));
        assertEquals(HOSTILE, dataOf(render(
                "<figure th:replace=\"~{charts :: ruler('ruler', 'Window', ${json})}\"></figure>", HOSTILE), "ruler"));
    }

    @Test
    void theCursorTableNamesItsCharts() {
        String html = render("<table th:replace=\"~{charts :: cursorTable('cursor', 'impedance esr')}\"></table>", "{}");

        assertTrue(html.contains("data-cursor-for=\"impedance esr\""), html);
    }

    private String render(String page, String json) {
        Context context = new Context();
        context.setVariables(Map.of("json", json));
        return engine.process(page, context);
    }

    private static String dataOf(String html, String id) {
        int element = html.indexOf("id=\"" + id + "-data\"");
        int start = html.indexOf('>', element) + 1;
        return HtmlUtils.htmlUnescape(html.substring(start, html.indexOf('<', start)));
    }
}
