/**
 * The stateless calculation API: JSON in, the electrical calculations, JSON out. Requests are records whose field names and
 * constraints are the published contract; nothing is stored. Refusals are problem documents (RFC 9457) that name every
 * wrong field.
 */
package org.stillrail.calculation;
