/**
 * The year: how many hours each piece still takes, how many there are, which pieces to choose, in what order, and
 * when they are likely to be finished. Takes a basket and what is reckoned of its pieces; gives hours and days, and
 * rounds nothing but days. Reads no clock: the day it looks from is given.
 */
package kitleaf.sizing.year;
