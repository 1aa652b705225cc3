/**
 * How big a piece comes out on a cloth, how to cut it, and where its first stitch and centre lie.
 *
 * <p>Two states of one cloth are kept apart: at the <em>table</em>, as it is cut, before it shrinks, and
 * at the <em>hoop</em>, as it is stitched, after it has shrunk. Threads keep their number from one to
 * the other; only the distance between them changes.
 */
package kitleaf.sizing.cloth;
