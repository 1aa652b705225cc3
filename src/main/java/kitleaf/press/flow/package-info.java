/**
 * Blocks that find their own height and are shared out among pages, cards or a box. Knows {@code drawing}, {@code type} and {@code markup}.
 */
package kitleaf.press.flow;
