package org.stillrail.web;

/**
 * What a form and the document that it makes have to do with each other.
 *
 * @param <D> the document
 */
public interface FormShape<D> {

    /** The form as the document fills it. */
    Form fill(D document);

    /** The document, or null where a field is wrong; in any case the form knows the labels of its fields from then on. */
    D read(Form form);

    /** Fields of one group mean something only together, as a limit and the document that it comes from; a field alone is its own group. */
    String group(String field);

    /** A value as the page writes it, for choices that are sent as a key. */
    String words(String field, String value);
}
