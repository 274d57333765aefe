/** How a bank's figures are spread over production: the page of random banks, with its charts and its table. */
package org.stillrail.bank.spread;
