package kitleaf.command.json;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import kitleaf.basket.Part;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchKind;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.Missing;
import kitleaf.sizing.thread.StashShare;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;

/** Says what is reckoned of threads. A thread whose need is unknown has {@code "known": false} and no figures at all. */
final class ThreadsJson {

    private ThreadsJson() { }

    /** A thread of one piece, for the whole piece. */
    static JsonObject of(ThreadTotal thread) {
        JsonObject json = new JsonObject().put("code", thread.code()).put("skein", thread.putUp().name()).put("known", thread.known());
        if (thread.known()) {
            Estimate plyMm = thread.plyLengthMm().orElseThrow();
            json.put("ply-length-mm", plyMm.likely()).put("ply-length-low-mm", plyMm.low()).put("ply-length-high-mm", plyMm.high());
            putSkeins("skeins", thread.skeins().orElseThrow(), json).put("buy", thread.buy().orElseThrow()).put("edge", thread.edge());
        }
        return json.put("uses", thread.needs(), ThreadsJson::need);
    }

    private static JsonObject need(ThreadNeed need) {
        CalledThread thread = need.thread();
        JsonObject json = new JsonObject().put("part", need.part().map(Part::title))
                .put("strands", thread.strands().usual()).put("needle", need.needle());
        if (thread.strands().differ()) {
            json.put("strands-by-kind", byKind(thread.kinds(), thread.strands()::in))
                    .put("needle-by-kind", byKind(thread.kinds(), need::needle));
        }
        json.put("lot", thread.lot()).put("mix-lots", thread.lot().map(lot -> thread.mixLots()));
        if (need instanceof ThreadNeed.Known known) {
            return json.put("stitches", known.stitches()).put("from", known.pathMm().isPresent() ? "path" : "used")
                    .put("path-mm", known.pathMm()).put("ply-length-mm", known.plyLengthMm().likely());
        }
        return json.put("missing", ((ThreadNeed.Unknown) need).why());
    }

    /** What to buy for all unfinished pieces. */
    static JsonObject of(BuyList list) {
        return new JsonObject().put("lines", list.lines(), ThreadsJson::line).putCost(list.cost())
                .put("warnings", list.warnings(), warning -> new JsonObject().put("kind", warning.kind()).put("code", warning.code())
                        .put("skein", warning.skein()).put("pieces", warning.pieces()));
    }

    private static JsonObject line(BuyLine line) {
        JsonObject json = new JsonObject().put("code", line.code()).put("skein", line.putUp().name());
        return putSkeins("need", line.needSkeins(), json).put("from-stash", line.drawnSkeins())
                .put("missing", line.missingSkeins()).put("buy", line.buy()).put("ask-for-lots", lots(line.missing()))
                .put("edge", line.edge()).putCost(line.cost())
                .put("pieces", line.shares(), ThreadsJson::share).put("unknown", line.unknown());
    }

    private static JsonObject share(StashShare share) {
        return new JsonObject().put("piece", share.piece()).put("wanted", share.wantedSkeins()).put("missing", share.toBuySkeins())
                .put("ask-for-lots", lots(share.missing()))
                .put("from-stash", share.drawn(), drawn -> new JsonObject().put("lot", drawn.lot()).put("skeins", drawn.skeins()));
    }

    /** What has to be asked for by its lot; nothing where any lot will do. */
    private static Optional<List<JsonObject>> lots(Missing missing) {
        return Optional.of(missing.asked().stream().map(one -> new JsonObject().put("lot", one.lot().orElseThrow())
                .put("missing", one.skeins()).put("buy", one.whole())).toList()).filter(lots -> !lots.isEmpty());
    }

    private static JsonObject byKind(List<StitchKind> kinds, ToIntFunction<StitchKind> number) {
        JsonObject json = new JsonObject();
        kinds.forEach(kind -> json.put(kind.word(), number.applyAsInt(kind)));
        return json;
    }

    private static JsonObject putSkeins(String name, Estimate skeins, JsonObject json) {
        return json.put(name + "-low", skeins.low()).put(name + "-likely", skeins.likely()).put(name + "-high", skeins.high());
    }
}
