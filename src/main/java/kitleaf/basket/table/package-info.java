/**
 * Tables (CSV): found, taken apart into nodes as if they had been lists, and written. Knows what is below {@code key}.
 */
package kitleaf.basket.table;
