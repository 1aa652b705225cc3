/**
 * The best that can be cut from one rectangle by cuts from edge to edge. It knows of rectangles, values and patience; of cloth
 * it knows nothing.
 */
package kitleaf.sizing.cutting;
