package org.stillrail.account;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.expression.WebExpressionAuthorizationManager;
import org.springframework.security.web.authentication.HttpStatusEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.csrf.CsrfFilter;

/**
 * Two ways in: a token for {@code /api}, a session for pages. Whatever is not named here needs a signed-in person; what
 * needs more says so on its handler with an expression of {@link May}.
 */
@Configuration(proxyBeanMethods = false)
@EnableMethodSecurity
class SecurityConfiguration {

    private static final String CONTENT_SECURITY_POLICY = "default-src 'self'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    private final Refusals refusals;

    SecurityConfiguration(Refusals refusals) {
        this.refusals = refusals;
    }

    @Bean
    @Order(1)
    SecurityFilterChain apiSecurity(HttpSecurity http, TokenCheck tokenCheck) throws Exception {
        AuthenticationEntryPoint noToken = (request, response, reason) -> {
            response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
            ApiProblem.send(response, HttpStatus.UNAUTHORIZED, "A valid token is needed: Authorization: Bearer TOKEN");
        };
        AccessDeniedHandler notAllowed = (request, response, reason) -> {
            refusals.note(request, reason);
            ApiProblem.send(response, HttpStatus.FORBIDDEN, "The owner of this token does not hold a role that may do this");
        };
        return http
                .securityMatcher("/api/**")
                .authorizeHttpRequests(requests -> requests
                        .requestMatchers("/api/openapi", "/api/openapi.yaml").permitAll()
                        // Refused here, before a body is read.
                        .requestMatchers("/api/v1/calculations/**").access(new WebExpressionAuthorizationManager(May.CALCULATE))
                        .anyRequest().authenticated())
                .csrf(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .oauth2ResourceServer(server -> server
                        .opaqueToken(token -> token
                                .introspector(tokenCheck)
                                .authenticationConverter(TokenCheck::authentication))
                        .authenticationEntryPoint(noToken)
                        .accessDeniedHandler(notAllowed))
                .exceptionHandling(handling -> handling.authenticationEntryPoint(noToken).accessDeniedHandler(notAllowed))
                .headers(SecurityConfiguration::headers)
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pageSecurity(HttpSecurity http, SignInSucceeded succeeded, SignInFailed failed) throws Exception {
        AuthenticationEntryPoint signedOut = new HttpStatusEntryPoint(HttpStatus.UNAUTHORIZED);
        AuthenticationEntryPoint signIn = new LoginUrlAuthenticationEntryPoint("/sign-in");
        return http
                .authorizeHttpRequests(requests -> requests
                        .dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD).permitAll()
                        .requestMatchers("/sign-in", "/setup", "/css/**", "/js/**", "/webjars/**", "/favicon.*",
                                "/actuator/health").permitAll()
                        .anyRequest().authenticated())
                .formLogin(form -> form
                        .loginPage("/sign-in")
                        .usernameParameter("userName")
                        .passwordParameter("password")
                        .successHandler(succeeded)
                        .failureHandler(failed))
                .logout(logout -> logout.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?signed-out"))
                .exceptionHandling(handling -> handling
                        .authenticationEntryPoint((request, response, reason) ->
                                (isFromScript(request) ? signedOut : signIn).commence(request, response, reason))
                        .accessDeniedHandler((request, response, reason) -> {
                            refusals.note(request, reason);
                            response.sendError(HttpStatus.FORBIDDEN.value(), explanation(request, reason));
                        }))
                .addFilterBefore(new UnreadableForm(), CsrfFilter.class)
                .headers(SecurityConfiguration::headers)
                .build();
    }

    private static String explanation(HttpServletRequest request, AccessDeniedException reason) {
        if (!(reason instanceof CsrfException)) {
            return Objects.requireNonNullElse(Refusals.sentence(reason), "Your roles do not allow this.")
                    + " Nothing was changed, and the attempt is in the record.";
        }
        return request.getUserPrincipal() == null
                ? "You are signed out, so the form was not taken. Nothing was changed."
                : "The form was opened in another session, so it was not taken. Nothing was changed.";
    }

    /** A script must get a plain 401 when the session has ended: a sign-in page would be swapped into what the person typed. */
    private static boolean isFromScript(HttpServletRequest request) {
        String fetchMode = request.getHeader("Sec-Fetch-Mode");
        return request.getHeader("HX-Request") != null || fetchMode != null && !fetchMode.equals("navigate");
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY));
    }
}
