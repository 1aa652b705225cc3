/**
 * Trees of values that know their places, made of YAML. What a value means is left to who asks. Knows {@code place} alone.
 */
package kitleaf.basket.yaml;
