/**
 * Cloth as records: what a piece is stitched on, what lies there, what shops sell, and what cutting costs. Knows no other room but the
 * records above.
 */
package kitleaf.basket.cloth;
