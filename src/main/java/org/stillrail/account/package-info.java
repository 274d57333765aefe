/**
 * People, their roles, sign-in and tokens, and what an installation is for (a team's work or the demo).
 *
 * <p>For other rooms: {@link org.stillrail.account.CurrentPerson} is the principal on every page and every call of the API,
 * {@link org.stillrail.account.May} says who may do what, {@link org.stillrail.account.People} finds names, and a
 * {@link org.stillrail.account.DemoChapter} fills the demo.
 */
package org.stillrail.account;
