/**
 * How each kind of value is written: its reading, its advice and its shape for editors' schemas. Knows records and {@code place}.
 */
package kitleaf.basket.form;
