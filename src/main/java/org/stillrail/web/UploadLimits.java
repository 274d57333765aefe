package org.stillrail.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;

/** How large a file may be, by the path it is sent to. */
@Component
public class UploadLimits {

    private static final DataSize FILE = DataSize.ofMegabytes(20);
    private static final DataSize REQUEST = DataSize.ofMegabytes(100);

    private final List<LargeUpload> large;
    private final DataSize largest;

    UploadLimits(List<LargeUpload> large, @Value("${spring.servlet.multipart.max-file-size}") DataSize largest) {
        this.large = List.copyOf(large);
        this.largest = largest;
    }

    /** Of a {@link LargeUpload}, in MiB. */
    public long largestMib() {
        return largest.toMegabytes();
    }

    /** In bytes. */
    long file(HttpServletRequest request) {
        return largeOf(request).isPresent() ? largest.toBytes() : FILE.toBytes();
    }

    /** All files of a request together, in bytes. */
    long all(HttpServletRequest request) {
        return largeOf(request).isPresent() ? largest.toBytes() : REQUEST.toBytes();
    }

    /** What is said of a file that is over the limit. */
    String refusal(HttpServletRequest request) {
        return largeOf(request)
                .map(upload -> upload.what() + " is larger than " + largestMib() + " MiB, the most that this installation takes (spring.servlet.multipart.max-file-size"
                        + " in its settings).")
                .orElse("The file is larger than " + FILE.toMegabytes() + " MiB, the most that is taken.") + " Nothing was stored.";
    }

    private Optional<LargeUpload> largeOf(HttpServletRequest request) {
        return large.stream().filter(upload -> upload.path().equals(request.getServletPath())).findFirst();
    }
}
