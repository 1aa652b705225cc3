/**
 * Makes a basket of files, or every problem in them: one reader a family of records. It never stops at a fault.
 */
package kitleaf.basket.reader;
