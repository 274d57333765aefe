package org.stillrail.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.function.Supplier;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.authorization.AuthorizationDeniedException;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.authorization.method.PreAuthorizeAuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.util.SimpleMethodInvocation;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Asks a handler's {@code @PreAuthorize} before its arguments are read. Method security alone asks afterwards: someone without
 * the role would be told what is wrong with the form, and a large upload would be taken in only to be refused.
 */
@Configuration(proxyBeanMethods = false)
class RefuseEarly implements WebMvcConfigurer {

    private final PreAuthorizeAuthorizationManager preAuthorize = new PreAuthorizeAuthorizationManager();

    RefuseEarly(ApplicationContext context) {
        preAuthorize.setApplicationContext(context);
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new Interceptor());
    }

    private final class Interceptor implements HandlerInterceptor {

        @Override
        public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
            if (handler instanceof HandlerMethod method && asks(method)) {
                Supplier<Authentication> who = () -> SecurityContextHolder.getContext().getAuthentication();
                Object target = method.getBean();
                AuthorizationResult result =
                        preAuthorize.authorize(who, new SimpleMethodInvocation(target, method.getMethod(), new Object[0]));
                if (result != null && !result.isGranted()) {
                    throw new AuthorizationDeniedException("Access Denied", result);
                }
            }
            return true;
        }
    }

    private static boolean asks(HandlerMethod method) {
        return AnnotatedElementUtils.hasAnnotation(method.getMethod(), PreAuthorize.class)
                || AnnotatedElementUtils.hasAnnotation(method.getBeanType(), PreAuthorize.class);
    }
}
