package org.stillrail.architecture.planted.bank;

/** What the lower room reaches for. */
public class StoredBank {}
