/**
 * What is said to her and how: in which language, on which screen, and why a command stops. Knows no command, no file it writes, and
 * nothing of options.
 */
package kitleaf.command.speech;
