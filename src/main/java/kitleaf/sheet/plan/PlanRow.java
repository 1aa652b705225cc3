package kitleaf.sheet.plan;

/**
 * A row of words on the cloth plan, in its place. Absent text is empty.
 *
 * @param kind {@code section} (a heading), {@code step}, {@code item} (a piece, a purchase, a cloth), {@code sum} or {@code note}
 * @param tick whether it has a box to tick
 * @param mark a number or letter before it
 * @param name what it says
 * @param nameWidthMm what that is wrapped to
 * @param nameLines how many lines it takes
 * @param right at its right end
 * @param rightWidthMm room for that
 * @param below small, below the name
 * @param belowLines how many lines that takes
 * @param heightMm its height
 * @param xMm its left side
 * @param yMm its top
 * @param widthMm its width
 */
public record PlanRow(String kind, boolean tick, String mark, String name, double nameWidthMm, int nameLines, String right, double rightWidthMm,
                      String below, int belowLines, double heightMm, double xMm, double yMm, double widthMm) {

    PlanRow at(double leftMm, double topMm) {
        return new PlanRow(kind, tick, mark, name, nameWidthMm, nameLines, right, rightWidthMm, below, belowLines, heightMm, leftMm, topMm, widthMm);
    }
}
