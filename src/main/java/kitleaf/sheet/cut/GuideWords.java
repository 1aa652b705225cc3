package kitleaf.sheet.cut;

/**
 * What is said of a corner guide.
 *
 * @param cloth count and over
 * @param left from the left cut edge to the first stitch, in both units
 * @param leftBrief the same in her own unit, as short as can be
 * @param top from the top cut edge to the first stitch, in both units
 * @param topBrief the same in her own unit, as short as can be
 * @param prick the threads to count in to the first stitch
 * @param ticks which threads the ticks count, and in which state of the cloth
 * @param sample what the sample of stitches shows
 */
public record GuideWords(String cloth, String left, String leftBrief, String top, String topBrief, String prick, String ticks,
                         String sample) { }
