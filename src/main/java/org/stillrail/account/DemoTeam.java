package org.stillrail.account;

/**
 * The invented people of the demo, by what they do.
 *
 * @param lead engineer and reviewer in one person
 */
public record DemoTeam(
        CurrentPerson viewer,
        CurrentPerson engineer,
        CurrentPerson librarian,
        CurrentPerson reviewer,
        CurrentPerson administrator,
        CurrentPerson lead) {}
