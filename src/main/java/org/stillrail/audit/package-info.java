/**
 * The append-only record of who did what, chained by hash. Lowest of the rooms that store: it uses no other room, and every
 * room that changes something writes here with {@link org.stillrail.audit.AuditTrail}.
 */
package org.stillrail.audit;
