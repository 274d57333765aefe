/** A small tree of rooms in which every class breaks one line on purpose; {@code PlantedOffenderTest} sees each caught. */
package org.stillrail.architecture.planted;
