/**
 * Files that come to lie in their places whole, all or none: written beside them as drafts, put there in a run's turn at the folder,
 * and what a killed run left mended or swept. Takes names and bytes; knows nothing of what stands in them.
 */
package kitleaf.command.files;
