package org.stillrail.account;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;

/**
 * The person who makes the request, signed in on a page or by a token: {@code @AuthenticationPrincipal CurrentPerson person}.
 *
 * <p>It is kept in the session as it was at sign-in; a change of roles or of the password ends the person's sessions. The
 * password hash is dropped after the check and never stored with the session. No serial version is fixed on purpose: a session
 * of another version of this class counts as signed out.
 */
public final class CurrentPerson implements UserDetails, CredentialsContainer {

    private final UUID id;
    private final String userName;
    private final String displayName;
    private final EnumSet<Role> roles;
    private final boolean passwordChangeDue;
    private final boolean active;
    private final boolean locked;
    private transient String passwordHash;

    CurrentPerson(Person person, boolean passwordChangeDue, boolean locked, String passwordHash) {
        this.id = person.id();
        this.userName = person.userName();
        this.displayName = person.displayName();
        this.roles = EnumSet.noneOf(Role.class);
        this.roles.addAll(person.roles());
        this.passwordChangeDue = passwordChangeDue;
        this.active = person.active();
        this.locked = locked;
        this.passwordHash = passwordHash;
    }

    /** A principal for someone who need not show a password here: by token, or in a demo chapter. */
    static CurrentPerson of(Person person) {
        return new CurrentPerson(person, false, false, null);
    }

    public UUID id() {
        return id;
    }

    /** What goes into the audit trail. */
    public String userName() {
        return userName;
    }

    /** What goes beside a revision or a comment. */
    public String displayName() {
        return displayName;
    }

    public Set<Role> roles() {
        return Set.copyOf(roles);
    }

    public boolean has(Role role) {
        return roles.contains(role);
    }

    /** For templates. */
    public String getDisplayName() {
        return displayName;
    }

    /** True while the password is one that an administrator gave out. */
    boolean passwordChangeDue() {
        return passwordChangeDue;
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.copyOf(roles.stream().map(role -> new SimpleGrantedAuthority(role.authority())).toList());
    }

    @Override
    public String getUsername() {
        return userName;
    }

    @Override
    public String getPassword() {
        return passwordHash;
    }

    @Override
    public boolean isAccountNonLocked() {
        return !locked;
    }

    @Override
    public boolean isEnabled() {
        return active;
    }

    @Override
    public void eraseCredentials() {
        passwordHash = null;
    }

    @Override
    public String toString() {
        return userName;
    }
}
