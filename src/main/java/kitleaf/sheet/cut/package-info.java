/**
 * The cut sheets: for each piece its sizes, steps, drawing and what-if table, and behind them the corner guide at true size. Takes
 * a reckoning and settings, gives a sheet. Knows no other sheet.
 */
package kitleaf.sheet.cut;
