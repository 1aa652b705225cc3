/**
 * Where labels lie on their sheets, and where plain paper is cut to make them.
 */
package kitleaf.sizing.label;
