package org.stillrail.report;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;

/** Well-formed XHTML to PDF. Its fonts travel with it: what a machine has installed does not matter. */
final class PdfWriter {

    /** Characters that XML 1.0 does not know; a user may have typed them. */
    private static final Pattern NOT_XML = Pattern.compile("[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    static {
        XRLog.setLoggingEnabled(false);
    }

    private PdfWriter() {
    }

    static byte[] write(String xhtml) {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFont(() -> PdfWriter.class.getResourceAsStream("DejaVuSans.ttf"), "Report", 400, null, true);
        builder.useFont(() -> PdfWriter.class.getResourceAsStream("DejaVuSans-Bold.ttf"), "Report", 700, null, true);
        // Nothing is fetched: everything is in the page, and a user's text must not name an address.
        builder.useUriResolver((base, uri) -> null);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.withHtmlContent(NOT_XML.matcher(xhtml).replaceAll("\uFFFD"), null);
            builder.toStream(pdf);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf.toByteArray();
    }
}
