/**
 * Runs a sheet's FreeMarker template over its view records and gives the page markup as a stream, or says which line of the template
 * failed. Takes a {@link kitleaf.sheet.page.Sheet}, and knows no kind of sheet; nobody else knows FreeMarker.
 */
package kitleaf.sheet.template;
