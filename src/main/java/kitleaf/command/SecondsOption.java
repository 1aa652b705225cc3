package kitleaf.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/** Reads {@code --plan-seconds}. */
final class SecondsOption implements ITypeConverter<PlanTime> {

    /** A day: whoever waits longer mistyped. */
    private static final double MOST = 86_400;

    /** The option. */
    static OptionSpec.Builder planSeconds() {
        return OptionSpec.builder("--plan-seconds").paramLabel("N").type(PlanTime.class).converters(new SecondsOption())
                .defaultValue(PlanTime.USUAL);
    }

    @Override
    public PlanTime convert(String value) {
        try {
            double seconds = value.matches("[0-9]*\\.?[0-9]+|[0-9]+\\.") ? Double.parseDouble(value) : Double.NaN;
            if (seconds >= 0 && seconds <= MOST) {
                return new PlanTime(seconds);
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what to write instead.
        }
        throw new Unreadable("value.seconds", value, (int) MOST);
    }
}
