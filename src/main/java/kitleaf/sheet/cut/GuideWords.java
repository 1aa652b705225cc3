package kitleaf.sheet.cut;

/**
 * What is said of a corner guide.
 *
 * @param cloth count and over
 * @param distances from cut edge to first stitch, in a sentence
 * @param acrossLength from the left edge to the first stitch, in both units
 * @param acrossBrief the same in her own unit
 * @param downLength from the top edge to the first stitch, in her own unit
 * @param prick what to do at the first stitch
 * @param ticks which threads the ticks count, and in which state of the cloth
 * @param sample what the sample of stitches shows
 */
public record GuideWords(String cloth, String distances, String acrossLength, String acrossBrief, String downLength, String prick,
                         String ticks, String sample) { }
