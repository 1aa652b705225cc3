/**
 * Things with keys. Knows {@code form}, {@code yaml} and {@code place}, and no particular key.
 */
package kitleaf.basket.key;
