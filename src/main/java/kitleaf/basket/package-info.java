/**
 * What the stitcher wrote down: YAML and CSV in, immutable records out, or every problem with its
 * file, line and column. Knows nothing of sizing, templates or PDF.
 */
package kitleaf.basket;
