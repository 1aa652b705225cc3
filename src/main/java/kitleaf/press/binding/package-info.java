/**
 * Pages that are ready become one PDF: each is locked up as a forme (printers' word for all that is printed at one go), and bound behind
 * the one before it, with metadata and bookmarks. The program's OpenPDF document is here. Knows {@code type} and {@code markup}.
 */
package kitleaf.press.binding;
