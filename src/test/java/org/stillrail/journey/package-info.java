/**
 * What people do in a browser, from the first page to the last, on the demo. A journey speaks of labels, headings and
 * buttons as a reader sees them; {@link org.stillrail.journey.Visitor} and the page objects know how to find them.
 */
package org.stillrail.journey;
