/** What leaves the tool: the review report on paper, bills of materials, curves, and whole projects. Top of the order: nobody uses it. */
package org.stillrail.report;
