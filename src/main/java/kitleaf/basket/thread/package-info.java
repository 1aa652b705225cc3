/**
 * Thread as records: what a piece calls for, in which stitches and strands, how thread is sold, and what lies in the stash. Knows no
 * other room but the
 * records above.
 */
package kitleaf.basket.thread;
