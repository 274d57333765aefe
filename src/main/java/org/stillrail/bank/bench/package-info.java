/** What the bench measured on an assembled bank, held against its prediction, and the sheet to take to the bench. */
package org.stillrail.bank.bench;
