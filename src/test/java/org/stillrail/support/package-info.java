/** What the tests of all rooms share: one running application, people to act as, and two databases. */
package org.stillrail.support;
