/**
 * The engine: pure functions from a basket's records to results. Lengths are double millimetres and
 * nothing is rounded before display, but for the cut size, which is rounded up by its definition.
 * Knows nothing of files, templates or PDF.
 */
package kitleaf.sizing;
