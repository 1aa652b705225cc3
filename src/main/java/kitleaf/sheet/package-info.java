/**
 * Turns results into pages: view records for each sheet, the words on them, and FreeMarker templates that
 * write the page markup. Knows nothing of the library that draws it.
 */
package kitleaf.sheet;
