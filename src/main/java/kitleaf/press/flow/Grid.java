package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows whose blocks stand in columns of the same widths; or blocks in as many equal columns as the widest of them leaves room for.
 *
 * @param columns of rows; empty for equal columns
 * @param heads rows above the others, repeated on every page
 * @param spareMm what it leaves below, where it shows only so many of its last rows as its room holds: an {@code either} among them as
 *     it begins, but the first shown after others that are not, as it ends; negative where it shows all
 */
record Grid(Stance stance, List<ColumnWidth> columns, List<Block> heads, List<Block> blocks, double gapMm, double spareMm)
        implements Block {

    @Override
    public boolean isEmpty() {
        return blocks.isEmpty() && heads.isEmpty();
    }

    @Override
    public boolean takesRest() {
        return false;
    }

    @Override
    public double naturalMm(Setter setter) {
        return blocks.stream().filter(it -> it.isThere(setter)).mapToDouble(it -> it.naturalMm(setter)).max().orElse(0);
    }

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        Laid laid = pile(flow(widthMm, roomMm, setter));
        return laid.heightMm() > roomMm + ColumnWidth.SLACK_MM ? laid.notWhole() : laid;
    }

    private static Laid pile(List<FlowPart> rows) {
        Laid.Group group = new Laid.Group(rows.size());
        double yMm = 0;
        for (FlowPart row : rows) {
            group.put(row.laid(), 0, yMm + row.beforeMm());
            yMm += row.heightMm();
        }
        group.pad(yMm - group.heightMm());
        return group.laid();
    }

    @Override
    public List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        if (columns.isEmpty()) {
            return cells(widthMm, roomMm, setter).stream().map(FlowPart::of).toList();
        }
        double[] contentsMm = new double[columns.size()];
        for (int i = 0; i < contentsMm.length; i++) {
            contentsMm[i] = columns.get(i).kind() != ColumnWidth.Kind.CONTENT ? 0
                    : Math.max(contentMm(heads, i, setter), contentMm(blocks, i, setter));
        }
        ColumnWidth.Shared shared = ColumnWidth.share(columns, contentsMm, widthMm, gapMm);
        List<FlowPart> rows = new ArrayList<>(rows(heads, shared, widthMm, setter));
        Laid repeated = rows.isEmpty() ? null : pile(rows);
        for (int i = 0; i < rows.size(); i++) {
            rows.set(i, rows.get(i).kept());
        }
        for (FlowPart row : spareMm < 0 ? rows(blocks, shared, widthMm, setter)
                : last(roomMm - spareMm - FlowPart.heightMm(rows), shared, widthMm, setter)) {
            rows.add(row.under(repeated));
        }
        return rows;
    }

    private List<FlowPart> last(double roomMm, ColumnWidth.Shared shared, double widthMm, Setter setter) {
        List<Block> there = blocks.stream().filter(it -> it.isThere(setter)).toList();
        List<FlowPart> rows = rows(there.stream().map(it -> it instanceof Either either ? either.blocks().get(0) : it).toList(), shared,
                widthMm, setter);
        int from = rows.size();
        for (double leftMm = roomMm; from > 0 && (from == rows.size() || rows.get(from - 1).heightMm() <= leftMm); from--) {
            leftMm -= rows.get(from - 1).heightMm();
        }
        List<FlowPart> shown = new ArrayList<>(rows.subList(from, rows.size()));
        if (from > 0 && shown.size() > 1 && there.get(from) instanceof Either either) {
            shown.set(0, rows(either.blocks().subList(1, 2), shared, widthMm, setter).get(0));
        }
        return shown;
    }

    private List<FlowPart> rows(List<Block> wanted, ColumnWidth.Shared shared, double widthMm, Setter setter) {
        List<FlowPart> rows = new ArrayList<>();
        for (Block block : wanted) {
            if (block.isThere(setter)) {
                Laid laid = row(block, shared, widthMm, setter);
                rows.add(FlowPart.of(shared.whole() ? laid : laid.notWhole()).around(block.stance()));
            }
        }
        return rows;
    }

    /** A row in the grid's columns; in a stack each of its rows. */
    private Laid row(Block block, ColumnWidth.Shared shared, double widthMm, Setter setter) {
        if (block instanceof Row row && row.blocks().size() == columns.size()) {
            return row.lay(shared.widthsMm(), gapMm, Double.POSITIVE_INFINITY, setter);
        }
        return block instanceof Stack stack && stack.frame() == null ? pile(rows(stack.blocks(), shared, widthMm, setter))
                : block.lay(widthMm, Double.POSITIVE_INFINITY, setter);
    }

    private double contentMm(List<Block> wanted, int column, Setter setter) {
        double most = 0;
        for (Block block : wanted) {
            if (block instanceof Row row && row.blocks().size() == columns.size()) {
                most = Math.max(most, row.contentMm(column, setter));
            } else if (block instanceof Stack stack) {
                most = Math.max(most, contentMm(stack.blocks(), column, setter));
            }
        }
        return most;
    }

    private List<Laid> cells(double widthMm, double roomMm, Setter setter) {
        List<Block> there = blocks.stream().filter(it -> it.isThere(setter)).toList();
        double widestMm = naturalMm(setter);
        int across = Math.max(1, (int) Math.floor((widthMm + gapMm) / (widestMm + gapMm) + ColumnWidth.SLACK_MM));
        double cellMm = (widthMm - (across - 1) * gapMm) / across;
        List<Laid> rows = new ArrayList<>();
        for (int from = 0; from < there.size(); from += across) {
            Laid.Group row = new Laid.Group(across);
            for (int i = from; i < Math.min(there.size(), from + across); i++) {
                Block block = there.get(i);
                row.put(Stack.of(List.of(block)).lay(cellMm, roomMm, setter), (i - from) * (cellMm + gapMm), 0);
            }
            rows.add(widestMm <= widthMm + ColumnWidth.SLACK_MM ? row.laid() : row.laid().notWhole());
        }
        return rows;
    }
}
