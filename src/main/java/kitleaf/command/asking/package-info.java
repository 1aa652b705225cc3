/**
 * Questions and answers of a first piece, and the text and name of the file they become. Takes what is typed, gives a text; writes no
 * file.
 */
package kitleaf.command.asking;
