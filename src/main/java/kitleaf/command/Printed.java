package kitleaf.command;

import java.nio.file.Path;
import kitleaf.press.PressReport;

/**
 * A sheet that was printed.
 *
 * @param file where it lies
 * @param report how it went
 */
record Printed(Path file, PressReport report) { }
