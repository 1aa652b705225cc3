/**
 * Where bag tags lie on their sheets, and where a back has to be printed to land on its front.
 */
package kitleaf.sizing.tag;
