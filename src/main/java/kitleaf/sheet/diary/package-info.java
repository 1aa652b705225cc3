/** The year as it was kept: the list of all pieces with how far each one is, and the look back. */
package kitleaf.sheet.diary;
