package kitleaf.basket;

/** The main piece's part of her time, a percentage above a half: with less, the other piece would be the main one. */
record MainShareText() implements Form<Double> {

    private static final String RANGE = "write more than 50%, up to 100%";
    private static final PercentText PERCENT = new PercentText(1, "is more than the whole", RANGE, "70%");

    @Override
    public Double read(String text) throws Fault {
        double share = PERCENT.read(text);
        if (!(share > 0.5)) {
            throw new Fault(Quote.of(text) + " is not the greater part", RANGE);
        }
        return share;
    }

    @Override
    public String example() {
        return PERCENT.example();
    }

    @Override
    public JsonShape shape() {
        return new JsonShape(PERCENT.shape().alternatives(), JsonShape.sentence(RANGE));
    }
}
