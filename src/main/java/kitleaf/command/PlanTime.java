package kitleaf.command;

/**
 * How long a cloth plan is searched for: in steps that are counted, so that equal options give equal plans on every machine,
 * asked for in the seconds they take about.
 *
 * @param seconds 0 or more
 */
record PlanTime(double seconds) {

    /** As the options write it. */
    static final String USUAL = "5";

    /** About so many are done in a second. */
    private static final double STEPS_A_SECOND = 1e6;

    /** With nought seconds: a fiftieth of one, in which small plans are found and proved. */
    private static final long MOMENT = 20_000;

    /** How many steps that are. */
    long steps() {
        return Math.max(MOMENT, (long) (seconds * STEPS_A_SECOND));
    }

    /** Asked for by whoever reads the options; a record's own would be made at run time, for a hundredth of a second. */
    @Override
    public String toString() {
        return seconds + " s";
    }
}
