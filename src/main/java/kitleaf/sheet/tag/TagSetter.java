package kitleaf.sheet.tag;

import java.util.List;
import kitleaf.sheet.page.Box;

/** Places what is on the fronts and backs of bag tags of one size. */
interface TagSetter {

    /**
     * What the front of one tag carries below its title.
     *
     * @param facts a line or more each
     * @param threads to tick off
     */
    record Part(List<String> facts, List<TagWords.Thread> threads) {
        /** Copies the lists. */
        public Part {
            facts = List.copyOf(facts);
            threads = List.copyOf(threads);
        }
    }

    /** The parts of the tags a piece needs: as much as has room, the rest on further tags; at least one tag. */
    List<Part> share(TagWords says);

    /** The front of a piece's tag number {@code index} of {@code count}. */
    TagFace front(TagWords says, Part part, int index, int count, Box box, boolean turned);

    /** The back of a piece's tag: the log, notes and the code. */
    TagFace back(TagWords says, Part part, int index, int count, Box box, boolean turned);
}
