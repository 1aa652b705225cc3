package kitleaf.press.drawing;

/** Takes an outline, point by point, in the element's own millimetres. */
interface Track {

    void move(double x, double y);

    void line(double x, double y);

    void curve(double x1, double y1, double x2, double y2, double x, double y);

    void close();
}
