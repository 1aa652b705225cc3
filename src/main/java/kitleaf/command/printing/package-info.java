/**
 * The way from a basket to its PDFs, pictures and table: read, reckon, lay out, press. Takes a job, gives what was printed; knows no
 * options.
 */
package kitleaf.command.printing;
