/**
 * The JSON Schemas by which editors complete and check a basket's files, drawn from what readers know.
 */
package kitleaf.basket.schema;
