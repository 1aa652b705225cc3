/**
 * Puts something into a file of hers and leaves all else as she wrote it. Nobody in {@code basket} knows this room.
 */
package kitleaf.basket.edit;
