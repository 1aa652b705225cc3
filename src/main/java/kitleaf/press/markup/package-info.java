/**
 * Page markup as it is read: elements with their places, what their attributes say (numbers, colours, styles, transforms), and what is
 * wrong in them. Knows no other room of the press.
 */
package kitleaf.press.markup;
