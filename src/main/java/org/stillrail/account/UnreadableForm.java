package org.stillrail.account;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * The check of a form's token is the first to read the form. When the form is over the limit or malformed, that is where it
 * shows, before any handler is chosen: answer with the page for that status and not with the server's exception.
 */
final class UnreadableForm extends OncePerRequestFilter {

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        // A script sends the token in a header; its form is read later, where a handler can answer.
        return !request.getMethod().equals("POST") || request.getHeader("X-CSRF-TOKEN") != null;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            request.getParameter("_csrf");
        } catch (InvalidParameterException unreadable) {
            response.sendError(unreadable.getErrorCode());
            return;
        }
        chain.doFilter(request, response);
    }
}
