package kitleaf.command.json;

import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;

/** Says what is reckoned of a year's goals. A figure nobody can know is {@code null}; dates are ISO 8601. */
final class GoalsJson {

    private GoalsJson() { }

    static JsonObject of(YearReckoning year) {
        return new JsonObject().put("year", year.year()).put("as-of", year.asOf())
                .putKnown("stitches-per-hour", year.stitchesPerHour())
                .put("stitches-per-hour-from", year.pace().stitchesPerHour().from())
                .putKnown("hours-per-week", year.hoursPerWeek())
                .put("hours-per-week-from", year.pace().hoursPerWeek().from())
                .put("chosen", year.chosen(), PlannedPiece::id)
                .putKnown("hours-available", year.hoursAvailable())
                .putKnown("hours-needed", year.hoursNeeded())
                .putKnown("chance-all", year.chanceAll())
                .put("pieces", year.chosen(), GoalsJson::piece)
                .put("finished", year.finished(), reckoned -> reckoned.piece().id())
                .put("not-chosen", year.notChosen(), piece -> new JsonObject().put("id", piece.reckoning().piece().id())
                        .putKnown("hours-left", piece.hoursLeft()).put("why", piece.why()))
                .put("warnings", year.warnings(), warning -> new JsonObject().put("kind", warning.kind())
                        .put("pieces", warning.pieces()).put("figure", warning.figure()));
    }

    private static JsonObject piece(PlannedPiece piece) {
        return new JsonObject().put("id", piece.id()).put("hours-left", piece.hoursLeft())
                .put("first-week", piece.firstWeek()).put("last-week", piece.lastWeek()).put("stitched", piece.stitched())
                .put("making-up-hours", piece.makingUpHours()).put("finish", piece.finish())
                .put("p10", piece.p10()).put("p50", piece.p50()).put("p90", piece.p90())
                .put("deadline", piece.deadline()).put("chance", piece.chance())
                .put("late-days", piece.lateDays()).put("place", piece.place());
    }
}
