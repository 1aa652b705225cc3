/**
 * Reads threads, from lists and tables, and what lies in the stash.
 */
package kitleaf.basket.reader.thread;
