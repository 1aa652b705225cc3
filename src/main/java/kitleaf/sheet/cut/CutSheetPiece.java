package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.sheet.words.OtherClothWords;

/**
 * A piece in the words and figures of its cut sheet. Absent text is empty.
 *
 * @param title the piece
 * @param subtitle designer, chart and cloth in one line
 * @param cutLabel above the cut size
 * @param cut the cut size, in the stitcher's units
 * @param cutOther in the other units
 * @param cutNote margins and what they are for
 * @param finishedLabel above the finished size
 * @param finished the finished size, in the stitcher's units
 * @param finishedOther in the other units
 * @param finishedNote parts worked over another number of threads
 * @param counts threads to count in: where to, and how many
 * @param centre where the centre stitch is
 * @param steps what to do, in order
 * @param cautions short ones, for blade, iron and dye
 * @param others the what-if table
 * @param othersNote what the table takes for granted
 */
public record CutSheetPiece(String title, String subtitle, String cutLabel, String cut, String cutOther,
                            String cutNote, String finishedLabel, String finished, String finishedOther,
                            String finishedNote, List<CountIn> counts, String centre, List<Step> steps,
                            List<String> cautions, List<OtherClothWords> others, String othersNote) {

    /** Copies the lists. */
    public CutSheetPiece {
        counts = List.copyOf(counts);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
        others = List.copyOf(others);
    }

    /**
     * Threads to count in.
     *
     * @param to from which edge, or to the centre
     * @param threads how many, with the word
     */
    public record CountIn(String to, String threads) { }

    /**
     * One step.
     *
     * @param words the whole of it
     * @param figure what is to be measured, as it stands in the words; empty for nothing
     */
    public record Step(String words, String figure) { }
}
