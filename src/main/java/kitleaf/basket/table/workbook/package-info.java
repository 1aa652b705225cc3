/**
 * Sheets of workbooks, read and never written: Office Open XML (ISO/IEC 29500-1, {@code .xlsx}) and OpenDocument (ISO/IEC 26300-1,
 * {@code .ods}). Knows {@code place} alone.
 */
package kitleaf.basket.table.workbook;
