/**
 * What programs read: a reckoning as JSON. Takes a {@code Reckoning} and gives a text; knows nothing of commands, options
 * or sheets.
 */
package kitleaf.command.json;
