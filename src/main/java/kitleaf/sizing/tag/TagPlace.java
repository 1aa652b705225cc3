package kitleaf.sizing.tag;

/**
 * Where one face of a tag lies on a page, in millimetres from the page's top left corner.
 *
 * @param xMm of its left side
 * @param yMm of its top
 * @param widthMm above 0
 * @param heightMm above 0
 * @param turned whether it stands on its head on the page, to be upright on the finished tag
 */
public record TagPlace(double xMm, double yMm, double widthMm, double heightMm, boolean turned) {

    /** Refuses faces without extent. */
    public TagPlace {
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("no such face: " + widthMm + " x " + heightMm);
        }
    }
}
