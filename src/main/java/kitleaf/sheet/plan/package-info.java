/**
 * The cloth plan: a drawing of each cloth with its pieces and cuts, the steps, and what is cut, bought and left over. Takes a
 * reckoning and settings, gives a sheet. Knows no other sheet.
 */
package kitleaf.sheet.plan;
