package org.stillrail.electrical.mounting;

/** One of the two nodes of a rail. */
public enum Node { CONVERTER, LOAD }
