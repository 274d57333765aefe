/** What the team sets for all its work: derating rules, limits, and what a part needs before it is vetted. */
package org.stillrail.team;
