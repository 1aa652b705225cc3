/**
 * How much thread a piece eats, what of it lies in the stash, and what to buy. Takes the records of a basket,
 * gives lengths in millimetres and amounts in skeins, and rounds only where whole skeins are bought. Every
 * figure without a source says so: stitching has no standard for thread.
 */
package kitleaf.sizing.thread;
