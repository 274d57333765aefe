package org.stillrail.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.core.Authentication;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Whoever signed in with a one-time password gets no further than the page where they choose their own. */
@Configuration(proxyBeanMethods = false)
class PasswordChangeDue implements WebMvcConfigurer {

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new Interceptor())
                .excludePathPatterns("/account/password", "/form-token", "/error", "/css/**", "/js/**", "/webjars/**", "/favicon.*");
    }

    private static final class Interceptor implements HandlerInterceptor {

        @Override
        public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) throws IOException {
            boolean due = request.getUserPrincipal() instanceof Authentication authentication
                    && authentication.getPrincipal() instanceof CurrentPerson person
                    && person.passwordChangeDue();
            if (due) {
                response.sendRedirect(request.getContextPath() + "/account/password");
            }
            return !due;
        }
    }
}
