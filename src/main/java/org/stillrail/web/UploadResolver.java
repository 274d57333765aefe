package org.stillrail.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.multipart.support.StandardMultipartHttpServletRequest;
import org.springframework.web.multipart.support.StandardServletMultipartResolver;
import org.springframework.web.servlet.DispatcherServlet;

/** Holds files against the limit of their path: the server knows only one for all. They are read when a handler asks for them. */
@Component(DispatcherServlet.MULTIPART_RESOLVER_BEAN_NAME)
class UploadResolver extends StandardServletMultipartResolver {

    private final UploadLimits limits;

    UploadResolver(UploadLimits limits) {
        this.limits = limits;
    }

    @Override
    public MultipartHttpServletRequest resolveMultipart(HttpServletRequest request) {
        return new StandardMultipartHttpServletRequest(request, true) {

            @Override
            protected void initializeMultipart() {
                super.initializeMultipart();
                long all = 0;
                for (MultipartFile file : getMultipartFiles().values().stream().flatMap(List::stream).toList()) {
                    all += file.getSize();
                    if (file.getSize() > limits.file(request) || all > limits.all(request)) {
                        throw new MaxUploadSizeExceededException(limits.file(request));
                    }
                }
            }
        };
    }
}
