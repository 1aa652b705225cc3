package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows whose blocks stand in columns of the same widths; or blocks in as many equal columns as the widest of them leaves room for.
 *
 * @param columns of rows; empty for equal columns
 * @param heads rows above the others, repeated on every page
 */
record Grid(Stance stance, List<ColumnWidth> columns, List<Block> heads, List<Block> blocks, double gapMm) implements Block {

    @Override
    public boolean isEmpty() {
        return blocks.isEmpty();
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
        List<Laid> rows = parts(widthMm, roomMm, setter);
        Laid.Group group = new Laid.Group(rows.size());
        rows.forEach(row -> group.put(row, 0, group.heightMm()));
        return group.heightMm() > roomMm + ColumnWidth.SLACK_MM ? group.laid().notWhole() : group.laid();
    }

    @Override
    public List<Laid> parts(double widthMm, double roomMm, Setter setter) {
        if (columns.isEmpty()) {
            return cells(widthMm, roomMm, setter);
        }
        List<Laid> rows = new ArrayList<>(rows(heads, widthMm, setter));
        rows.addAll(rows(blocks, widthMm, setter));
        return rows;
    }

    @Override
    public Laid repeated(double widthMm, Setter setter) {
        if (heads.isEmpty()) {
            return null;
        }
        Laid.Group group = new Laid.Group(heads.size());
        rows(heads, widthMm, setter).forEach(row -> group.put(row, 0, group.heightMm()));
        return group.laid();
    }

    private List<Laid> rows(List<Block> wanted, double widthMm, Setter setter) {
        ColumnWidth.Shared shared = ColumnWidth.share(columns, i -> contentMm(i, setter), widthMm, gapMm);
        List<Laid> rows = new ArrayList<>();
        for (Block block : wanted) {
            Laid laid = block instanceof Row row && row.blocks().size() == columns.size()
                    ? row.lay(shared.widthsMm(), Double.POSITIVE_INFINITY, setter)
                    : block.lay(widthMm, Double.POSITIVE_INFINITY, setter);
            Laid.Group spaced = new Laid.Group(1);
            spaced.put(shared.whole() ? laid : laid.notWhole(), 0, block.stance().beforeMm());
            spaced.pad(block.stance().afterMm());
            rows.add(spaced.laid());
        }
        return rows;
    }

    private double contentMm(int column, Setter setter) {
        double most = 0;
        for (List<Block> rows : List.of(heads, blocks)) {
            for (Block block : rows) {
                if (block instanceof Row row && row.blocks().size() == columns.size()) {
                    most = Math.max(most, row.contentMm(column, setter));
                }
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
