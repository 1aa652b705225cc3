/**
 * The bobbin labels: what stands on each and where, for as many pages as there are threads. Takes a reckoning and settings, gives a
 * sheet. Knows no other sheet.
 */
package kitleaf.sheet.label;
