/** What lies between a part and the rail: mounting inductance from geometry or a sweep, and banks spread over two nodes. */
package org.stillrail.electrical.mounting;
