/**
 * The goal grid for the wall, whole or in tiles, and the strip of the year's weeks behind it. Takes a reckoning and settings, gives
 * a sheet. Knows no other sheet.
 */
package kitleaf.sheet.goal;
