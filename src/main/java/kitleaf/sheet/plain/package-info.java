/**
 * The reckoning as plain lines for a screen, and what changed since the last print. Takes reckoned records, gives lines of
 * text in words of their own. Knows nothing of pages.
 */
package kitleaf.sheet.plain;
