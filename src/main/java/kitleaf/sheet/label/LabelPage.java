package kitleaf.sheet.label;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Parts;

/**
 * One page of labels.
 *
 * @param frame what every page has; only plain paper shows it
 * @param plain whether this is plain paper, with cut lines and a foot
 * @param round whether the labels are round
 * @param cutsX where plain paper is cut from top to bottom
 * @param cutsY where it is cut from side to side
 * @param labels in their places
 */
public record LabelPage(PageFrame frame, boolean plain, boolean round, List<Double> cutsX, List<Double> cutsY, List<Label> labels) {

    /** Copies the lists. */
    public LabelPage {
        Objects.requireNonNull(frame);
        cutsX = List.copyOf(cutsX);
        cutsY = List.copyOf(cutsY);
        labels = List.copyOf(labels);
    }

    /** Whether its labels are folded. */
    public boolean folded() {
        for (Label label : labels) {
            if (label.foldUpright() || label.foldLevel()) {
                return true;
            }
        }
        return false;
    }

    /**
     * One label.
     *
     * @param box the whole of it on the page
     * @param faces one, or two for a label folded round a bobbin
     * @param foldUpright whether it folds along an upright line in its middle
     * @param foldLevel whether it folds along a level line in its middle
     * @param bookmark the piece whose first label this is; empty for others
     */
    public record Label(Box box, List<LabelFace> faces, boolean foldUpright, boolean foldLevel, String bookmark) implements Parts {

        /** Copies the list. */
        public Label {
            Objects.requireNonNull(box);
            faces = List.copyOf(faces);
        }

        @Override
        public Object part(String name) {
            return switch (name) {
                case "box" -> box;
                case "faces" -> faces;
                case "foldUpright" -> foldUpright;
                case "foldLevel" -> foldLevel;
                case "bookmark" -> bookmark;
                default -> null;
            };
        }
    }
}
