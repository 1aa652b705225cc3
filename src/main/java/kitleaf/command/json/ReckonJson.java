package kitleaf.command.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.OtherCloth;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.year.YearReckoning;

/** Writes a reckoning as JSON, version 1. Keys may be added to a version; none is renamed or taken away. */
public final class ReckonJson {

    private static final int VERSION = 1;

    private ReckonJson() { }

    /** Writes it, with a year's goals if there are any, and ends the line. */
    public static void write(Reckoning reckoning, Optional<YearReckoning> year, PrintWriter out) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            json.useDefaultPrettyPrinter();
            of(reckoning, year).write(json);
        }
        out.println();
    }

    private static JsonObject of(Reckoning reckoning, Optional<YearReckoning> year) {
        List<PieceThreads> threads = reckoning.threads().pieces();
        return new JsonObject().put("version", VERSION).put("cut-step-mm", reckoning.cutStepMm())
                .put("pieces", IntStream.range(0, threads.size()).mapToObj(i -> piece(reckoning.pieces().get(i), threads.get(i))).toList())
                .put("buy-list", ThreadsJson.of(reckoning.threads().buyList()))
                .put("cloth-plan", ClothPlanJson.of(reckoning.clothPlan()))
                .put("goals", year.map(GoalsJson::of));
    }

    private static JsonObject piece(PieceReckoning reckoned, PieceThreads threads) {
        PieceSize size = reckoned.cloth().size();
        JsonObject json = new JsonObject().put("id", reckoned.piece().id()).put("title", reckoned.piece().title());
        return putSizes(size, json).put("cut-diagonal-mm", size.cutDiagonalMm())
                .put("stitches-total", reckoned.tally().total())
                .put("stitches-left", reckoned.tally().left())
                .put("stitches-from", reckoned.tally().from())
                .put("stitches-inferred", reckoned.tally().inferred())
                .put("state", reckoned.state())
                .put("across", extent(size.across())).put("down", extent(size.down()))
                .put("threads", threads.threads(), ThreadsJson::of)
                .put("parts", reckoned.cloth().parts(), part -> new JsonObject()
                        .put("part", part.part().title()).put("over", part.part().over())
                        .put("finished-width-mm", part.widthMm()).put("finished-height-mm", part.heightMm()))
                .put("other-cloths", reckoned.cloth().others(), ReckonJson::other);
    }

    private static JsonObject extent(Extent extent) {
        return new JsonObject().put("stitch-mm", extent.cellMm())
                .put("thread-pitch-mm", extent.pitchMm()).put("thread-pitch-at-table-mm", extent.tablePitchMm())
                .put("near-edge-to-design-mm", extent.nearEdgeToDesignMm()).put("far-edge-to-design-mm", extent.farEdgeToDesignMm())
                .put("threads-from-near-edge", extent.nearThreads()).put("threads-from-far-edge", extent.farThreads())
                .put("threads-to-centre", extent.centreThreads())
                .put("centre-stitch", extent.centreStitch()).put("centre-between", extent.centreBetween());
    }

    private static JsonObject other(OtherCloth other) {
        JsonObject json = new JsonObject().put("kind", other.kind()).putCount(other.count())
                .put("over", other.over()).put("own", other.own());
        return putSizes(other.size(), json);
    }

    private static JsonObject putSizes(PieceSize size, JsonObject json) {
        return json.put("finished-width-mm", size.across().finishedMm()).put("finished-height-mm", size.down().finishedMm())
                .put("cut-width-mm", size.across().cutMm()).put("cut-height-mm", size.down().cutMm());
    }
}
