package org.stillrail.architecture.planted.web;

import org.stillrail.architecture.planted.bank.StoredBank;

/** A layout that serves one room only. */
record KnowsAFeature(StoredBank offending) {}
