/** Revisions as documents: one codec for canonical JSON and one hash, used for storage, snapshots, export and import alike. */
package org.stillrail.document;
