/**
 * The commands: thin. They read options, hand over to the pipeline, and turn what went wrong into a
 * sentence and an exit code. No arithmetic.
 */
package kitleaf.command;
