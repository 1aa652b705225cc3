/**
 * What the stitcher wrote down, as immutable records: a basket and its pieces, her paper, labels, tags and goals. Cloth and thread have
 * rooms of their own beside it. Records know nothing of files, texts or forms, nor of sizing, templates or PDF.
 *
 * <p>Below them: {@code place} has texts with places and what is wrong at them, {@code yaml} makes trees of such texts, {@code form} says
 * how
 * each kind of value is written, {@code key} reads things with keys, {@code table} reads and writes CSV, {@code reader} makes the records
 * of all
 * that, {@code schema} draws what editors check by, and {@code edit} puts something into a file of hers.
 */
package kitleaf.basket;
