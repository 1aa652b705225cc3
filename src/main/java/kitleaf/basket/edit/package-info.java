/**
 * Puts something into a file of hers and leaves all else as she wrote it. Marks of the YAML parser are asked here alone, to find places;
 * what comes of it is read by the reader of baskets. Nobody in {@code basket} knows this room.
 */
package kitleaf.basket.edit;
