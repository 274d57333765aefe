/** What every page shares: layout, error pages, forms that keep what was typed, quantities with units. */
package org.stillrail.web;
