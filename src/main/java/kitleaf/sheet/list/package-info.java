/**
 * The kit lists and the buy list: rows to tick off, in columns, or in large print below each other. Takes a reckoning and
 * settings, gives a sheet. Knows no other sheet.
 */
package kitleaf.sheet.list;
