/**
 * What the search for a plan counts with, and which knows nothing of cloth: how many of each kind as one number ({@code Counts}), the
 * smallest boxes of all ({@code Front}), and for how long it goes on ({@code Patience}).
 */
package kitleaf.sizing.plan.search;
