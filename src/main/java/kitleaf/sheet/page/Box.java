package kitleaf.sheet.page;

/**
 * A rectangle on a page, in millimetres from the page's top left corner.
 *
 * @param xMm left side
 * @param yMm top
 * @param widthMm 0 or more
 * @param heightMm 0 or more
 */
public record Box(double xMm, double yMm, double widthMm, double heightMm) implements Parts {

    /** The right side. */
    public double rightMm() {
        return xMm + widthMm;
    }

    /** The bottom. */
    public double bottomMm() {
        return yMm + heightMm;
    }

    /** The middle, across. */
    public double midXMm() {
        return xMm + widthMm / 2;
    }

    /** The middle, down. */
    public double midYMm() {
        return yMm + heightMm / 2;
    }

    @Override
    public Object part(String name) {
        return switch (name) {
            case "xMm" -> xMm;
            case "yMm" -> yMm;
            case "widthMm" -> widthMm;
            case "heightMm" -> heightMm;
            default -> null;
        };
    }
}
