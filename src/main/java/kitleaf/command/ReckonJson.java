package kitleaf.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.OtherCloth;
import kitleaf.sizing.cloth.PartSize;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.year.YearReckoning;

/** Writes a reckoning as JSON, version 1. Keys may be added to a version; none is renamed or taken away. */
final class ReckonJson {

    private static final int VERSION = 1;

    private ReckonJson() { }

    static void write(Reckoning reckoning, Optional<YearReckoning> year, PrintWriter out) throws IOException {
        JsonGenerator json = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.useDefaultPrettyPrinter();
        json.writeStartObject();
        json.writeNumberField("version", VERSION);
        json.writeNumberField("cut-step-mm", reckoning.cutStepMm());
        json.writeArrayFieldStart("pieces");
        ThreadReckoning threads = reckoning.threads();
        for (int i = 0; i < reckoning.pieces().size(); i++) {
            write(reckoning.pieces().get(i), threads.pieces().get(i), json);
        }
        json.writeEndArray();
        ThreadsJson.write(threads.buyList(), json);
        ClothPlanJson.write(reckoning.clothPlan(), json);
        if (year.isPresent()) {
            GoalsJson.write(year.get(), json);
        }
        json.writeEndObject();
        json.close();
        out.println();
    }

    private static void write(PieceReckoning reckoned, PieceThreads threads, JsonGenerator json) throws IOException {
        PieceSize size = reckoned.cloth().size();
        json.writeStartObject();
        json.writeStringField("id", reckoned.piece().id());
        json.writeStringField("title", reckoned.piece().title());
        writeSizes(size, json);
        json.writeNumberField("cut-diagonal-mm", size.cutDiagonalMm());
        json.writeNumberField("stitches-total", reckoned.tally().total());
        json.writeNumberField("stitches-left", reckoned.tally().left());
        json.writeStringField("stitches-from", reckoned.tally().from().name().toLowerCase(Locale.ROOT));
        write("across", size.across(), json);
        write("down", size.down(), json);
        ThreadsJson.write(threads, json);
        json.writeArrayFieldStart("parts");
        for (PartSize part : reckoned.cloth().parts()) {
            json.writeStartObject();
            json.writeStringField("part", part.part().title());
            json.writeNumberField("over", part.part().over());
            json.writeNumberField("finished-width-mm", part.widthMm());
            json.writeNumberField("finished-height-mm", part.heightMm());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("other-cloths");
        for (OtherCloth other : reckoned.cloth().others()) {
            write(other, json);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void writeSizes(PieceSize size, JsonGenerator json) throws IOException {
        json.writeNumberField("finished-width-mm", size.across().finishedMm());
        json.writeNumberField("finished-height-mm", size.down().finishedMm());
        json.writeNumberField("cut-width-mm", size.across().cutMm());
        json.writeNumberField("cut-height-mm", size.down().cutMm());
    }

    private static void write(String direction, Extent extent, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(direction);
        json.writeNumberField("stitch-mm", extent.cellMm());
        json.writeNumberField("thread-pitch-mm", extent.pitchMm());
        json.writeNumberField("thread-pitch-at-table-mm", extent.tablePitchMm());
        json.writeNumberField("near-edge-to-design-mm", extent.nearEdgeToDesignMm());
        json.writeNumberField("far-edge-to-design-mm", extent.farEdgeToDesignMm());
        json.writeNumberField("threads-from-near-edge", extent.nearThreads());
        json.writeNumberField("threads-from-far-edge", extent.farThreads());
        json.writeNumberField("threads-to-centre", extent.centreThreads());
        json.writeNumberField("centre-stitch", extent.centreStitch());
        json.writeBooleanField("centre-between", extent.centreBetween());
        json.writeEndObject();
    }

    private static void write(OtherCloth other, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", other.kind().name().toLowerCase(Locale.ROOT));
        json.writeNumberField("warp-per-inch", other.count().warpPerInch());
        json.writeNumberField("weft-per-inch", other.count().weftPerInch());
        json.writeNumberField("over", other.over());
        json.writeBooleanField("own", other.own());
        writeSizes(other.size(), json);
        json.writeEndObject();
    }
}
