/** How far the parts and the conditions of a bank may stray: named corners, and random banks with a yield and its confidence. */
package org.stillrail.electrical.spread;
