/** Banks: composing branches from the library's parts, judging them against a rail, and keeping every saved revision. */
package org.stillrail.bank;
