package kitleaf.basket.form;

import kitleaf.basket.place.Fault;

/**
 * How one kind of value is written.
 *
 * @param <T> what it is once read
 */
public interface Form<T> {

    /**
     * The value a text stands for.
     *
     * @throws Fault if it stands for none
     */
    T read(String text) throws Fault;

    /** A value in this form, to show her. */
    String example();

    /** How values in this form look to an editor's schema. */
    JsonShape shape();
}
