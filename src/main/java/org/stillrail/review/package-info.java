/** How a bank revision is released: submission with concessions, review, signature on a frozen snapshot, recall. */
package org.stillrail.review;
