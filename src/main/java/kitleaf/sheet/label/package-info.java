/**
 * The bobbin labels: what each says, and where they lie on their sheets. Takes a reckoning and settings, gives a
 * sheet. Knows no other sheet.
 */
package kitleaf.sheet.label;
