/**
 * The duplex check: how far a printer places backs beside their fronts. Takes a reckoning and settings, gives a sheet. Knows no
 * other sheet.
 */
package kitleaf.sheet.duplex;
