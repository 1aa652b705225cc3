package kitleaf.sheet.plan;

/**
 * A row of words on the cloth plan. Absent text is empty.
 *
 * @param kind {@code section} (a heading), {@code item} (a piece, a purchase, a cloth), {@code sum}, {@code note} or {@code caution}
 * @param tick whether it has a box to tick
 * @param mark a number or letter before it
 * @param name what it says
 * @param right its size or price
 * @param below small, below the name
 */
public record PlanRow(String kind, boolean tick, String mark, String name, String right, String below) {

    static PlanRow section(String words) {
        return new PlanRow("section", false, "", words, "", "");
    }

    static PlanRow note(String words) {
        return new PlanRow("note", false, "", words, "", "");
    }

    static PlanRow caution(String words) {
        return new PlanRow("caution", false, "", words, "", "");
    }

    static PlanRow sum(String words, String right) {
        return new PlanRow("sum", false, "", words, right, "");
    }

    static PlanRow item(boolean tick, String mark, String name, String right, String below) {
        return new PlanRow("item", tick, mark, name, right, below);
    }
}
