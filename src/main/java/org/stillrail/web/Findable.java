package org.stillrail.web;

import java.util.List;

/** Implemented by every room that has something to be found by words; the search page asks all of them. */
public interface Findable {

    /** What is found, in the plural, as a heading such as 'Parts'. */
    String heading();

    /**
     * Things that hold every word.
     *
     * @param most how many at most
     */
    List<Found> find(SearchWords words, int most);

    /**
     * One thing found.
     *
     * @param path address of its page
     * @param note where it belongs, or a piece of the text
     */
    record Found(String name, String path, String note) {
    }
}
