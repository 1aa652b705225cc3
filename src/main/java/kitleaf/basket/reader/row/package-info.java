/**
 * Rows of tables that say what pieces' files could say: made into the nodes such a file would have been, and read by the same readers.
 */
package kitleaf.basket.reader.row;
