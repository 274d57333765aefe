package org.stillrail.architecture.planted.stray;

/** A room nobody gave a place in the order. */
class HasNoPlace {}
