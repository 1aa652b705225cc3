package kitleaf.press.flow;

/**
 * A drawing in a flow, of its own size; what stands in it has its places from its top left corner.
 *
 * @param heightMm how high it is; of one that takes the room that is left, the least
 * @param rest whether it takes the room that is left
 * @param everyMm in the room that is left, it is drawn again after so much; 0 for once
 */
record DrawnPlace(Stance stance, double widthMm, double heightMm, boolean rest, double everyMm, Recording drawing) implements Block {

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        double highMm = rest && roomMm < Double.POSITIVE_INFINITY ? Math.max(heightMm, roomMm) : heightMm;
        int times = everyMm > 0 ? (int) Math.floor(highMm / everyMm + ColumnWidth.SLACK_MM) : 1;
        Laid laid = Laid.drawn(highMm, times == 1 ? drawing : (x, y, artist) -> {
            for (int i = 0; i < times; i++) {
                drawing.at(x, y + i * everyMm, artist);
            }
        });
        return widthMm <= widthMm() - ColumnWidth.SLACK_MM || highMm > roomMm + ColumnWidth.SLACK_MM ? laid.notWhole() : laid;
    }

    @Override
    public double naturalMm(Setter setter) {
        return widthMm;
    }

    @Override
    public boolean takesRest() {
        return rest;
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
