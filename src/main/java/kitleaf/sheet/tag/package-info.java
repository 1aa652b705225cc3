/**
 * The bag tags: what stands on the faces of each, front and back, and where. Takes a reckoning and settings, gives a sheet. Knows
 * no other sheet.
 */
package kitleaf.sheet.tag;
