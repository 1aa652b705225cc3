/**
 * The program: its commands, the options they take and what is said of wrong ones. Takes arguments, gives sentences and exit codes; the
 * work is done below, in {@code printing}, {@code asking}, {@code json}, {@code files} and {@code speech}, which know no commands.
 */
package kitleaf.command;
