/**
 * The cloth plan: which pieces are cut from which cloth, by cuts from edge to edge, and what has to be bought.
 */
package kitleaf.sizing.plan;
