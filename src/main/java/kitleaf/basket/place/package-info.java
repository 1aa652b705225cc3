/**
 * Files as texts with places, and problems at those places. Whatever opens a basket's file is here. Knows nothing of YAML, tables or
 * records.
 */
package kitleaf.basket.place;
