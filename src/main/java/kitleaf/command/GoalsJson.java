package kitleaf.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.OptionalDouble;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.year.PassedOver;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.sizing.year.YearWarning;

/** Writes what is reckoned of a year's goals. A figure nobody can know is {@code null}; dates are ISO 8601. */
final class GoalsJson {

    private GoalsJson() { }

    static void write(YearReckoning year, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("goals");
        json.writeNumberField("year", year.year());
        json.writeStringField("as-of", year.asOf().toString());
        write("stitches-per-hour", year.stitchesPerHour(), json);
        json.writeStringField("stitches-per-hour-from", word(year.pace().stitchesPerHour().from()));
        write("hours-per-week", year.hoursPerWeek(), json);
        json.writeStringField("hours-per-week-from", word(year.pace().hoursPerWeek().from()));
        json.writeArrayFieldStart("chosen");
        for (PlannedPiece piece : year.chosen()) {
            json.writeString(piece.id());
        }
        json.writeEndArray();
        write("hours-available", year.hoursAvailable(), json);
        write("hours-needed", year.hoursNeeded(), json);
        write("chance-all", year.chanceAll(), json);
        json.writeArrayFieldStart("pieces");
        for (PlannedPiece piece : year.chosen()) {
            write(piece, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("finished");
        for (PieceReckoning piece : year.finished()) {
            json.writeString(piece.piece().id());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("not-chosen");
        for (PassedOver piece : year.notChosen()) {
            json.writeStartObject();
            json.writeStringField("id", piece.reckoning().piece().id());
            write("hours-left", piece.hoursLeft(), json);
            json.writeStringField("why", word(piece.why()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("warnings");
        for (YearWarning warning : year.warnings()) {
            json.writeStartObject();
            json.writeStringField("kind", word(warning.kind()));
            json.writeArrayFieldStart("pieces");
            for (String id : warning.pieces()) {
                json.writeString(id);
            }
            json.writeEndArray();
            if (warning.figure().isPresent()) {
                json.writeNumberField("figure", warning.figure().getAsDouble());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(PlannedPiece piece, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", piece.id());
        json.writeNumberField("hours-left", piece.hoursLeft());
        json.writeStringField("first-week", piece.firstWeek().toString());
        json.writeStringField("last-week", piece.lastWeek().toString());
        json.writeStringField("finish", piece.finish().toString());
        json.writeStringField("p10", piece.p10().toString());
        json.writeStringField("p50", piece.p50().toString());
        json.writeStringField("p90", piece.p90().toString());
        json.writeStringField("deadline", piece.deadline().toString());
        json.writeNumberField("chance", piece.chance());
        json.writeNumberField("late-days", piece.lateDays());
        json.writeStringField("place", word(piece.place()));
        json.writeEndObject();
    }

    private static void write(String key, OptionalDouble figure, JsonGenerator json) throws IOException {
        if (figure.isPresent()) {
            json.writeNumberField(key, figure.getAsDouble());
        } else {
            json.writeNullField(key);
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
