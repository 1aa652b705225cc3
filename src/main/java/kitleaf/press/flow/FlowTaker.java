package kitleaf.press.flow;

import java.io.IOException;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;

/** Makes pages of what stands in a flow, as it is read. */
public interface FlowTaker {

    /** Draws pages. */
    interface Printer {
        /** A page of the size the element says; the drawing's origin is its top left corner. */
        void print(Element page, Laid.Drawing drawing) throws MarkupException, IOException;
    }

    /** Takes an element in the flow that has been read whole. */
    void take(FlowReader.Node node) throws MarkupException, IOException;

    /** Draws what is left. */
    void end() throws MarkupException, IOException;
}
