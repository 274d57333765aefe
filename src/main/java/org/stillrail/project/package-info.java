/** Projects with their members, the rails they must feed, and converters that rails share. */
package org.stillrail.project;
