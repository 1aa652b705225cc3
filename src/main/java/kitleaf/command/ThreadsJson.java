package kitleaf.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import kitleaf.basket.Price;
import kitleaf.basket.thread.StitchKind;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.Missing;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.StashShare;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.sizing.thread.ThreadWarning;

/** Writes what is reckoned of threads. A thread whose need is unknown has {@code "known": false} and no figures at all. */
final class ThreadsJson {

    private ThreadsJson() { }

    /** The threads of one piece, for the whole piece. */
    static void write(PieceThreads piece, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("threads");
        for (ThreadTotal thread : piece.threads()) {
            json.writeStartObject();
            json.writeStringField("code", thread.code());
            json.writeStringField("skein", thread.putUp().name());
            json.writeBooleanField("known", thread.known());
            if (thread.known()) {
                Estimate plyMm = thread.plyLengthMm().orElseThrow();
                json.writeNumberField("ply-length-mm", plyMm.likely());
                json.writeNumberField("ply-length-low-mm", plyMm.low());
                json.writeNumberField("ply-length-high-mm", plyMm.high());
                write("skeins", thread.skeins().orElseThrow(), json);
                json.writeNumberField("buy", thread.buy().orElseThrow());
                json.writeStringField("edge", word(thread.edge()));
            }
            json.writeArrayFieldStart("uses");
            for (ThreadNeed need : thread.needs()) {
                write(need, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(ThreadNeed need, JsonGenerator json) throws IOException {
        json.writeStartObject();
        if (need.part().isPresent()) {
            json.writeStringField("part", need.part().get().title());
        }
        json.writeNumberField("strands", need.thread().strands().usual());
        json.writeNumberField("needle", need.needle());
        if (need.thread().strands().differ()) {
            write("strands-by-kind", need.thread().kinds(), need.thread().strands()::in, json);
            write("needle-by-kind", need.thread().kinds(), need::needle, json);
        }
        if (need.thread().lot().isPresent()) {
            json.writeStringField("lot", need.thread().lot().get());
            json.writeBooleanField("mix-lots", need.thread().mixLots());
        }
        if (need instanceof ThreadNeed.Known known) {
            json.writeNumberField("stitches", known.stitches());
            json.writeStringField("from", known.pathMm().isPresent() ? "path" : "used");
            if (known.pathMm().isPresent()) {
                json.writeNumberField("path-mm", known.pathMm().getAsDouble());
            }
            json.writeNumberField("ply-length-mm", known.plyLengthMm().likely());
        } else {
            json.writeStringField("missing", word(((ThreadNeed.Unknown) need).why()));
        }
        json.writeEndObject();
    }

    /** What to buy for all unfinished pieces. */
    static void write(BuyList list, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("buy-list");
        json.writeArrayFieldStart("lines");
        for (BuyLine line : list.lines()) {
            json.writeStartObject();
            json.writeStringField("code", line.code());
            json.writeStringField("skein", line.putUp().name());
            write("need", line.needSkeins(), json);
            json.writeNumberField("from-stash", line.drawnSkeins());
            json.writeNumberField("missing", line.missingSkeins());
            json.writeNumberField("buy", line.buy());
            write(line.missing(), json);
            json.writeStringField("edge", word(line.edge()));
            write(line.cost(), json);
            json.writeArrayFieldStart("pieces");
            for (StashShare share : line.shares()) {
                write(share, json);
            }
            json.writeEndArray();
            write("unknown", line.unknown(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        write(list.cost(), json);
        json.writeArrayFieldStart("warnings");
        for (ThreadWarning warning : list.warnings()) {
            json.writeStartObject();
            json.writeStringField("kind", word(warning.kind()));
            json.writeStringField("code", warning.code());
            json.writeStringField("skein", warning.skein());
            write("pieces", warning.pieces(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(StashShare share, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("piece", share.piece());
        json.writeNumberField("wanted", share.wantedSkeins());
        json.writeNumberField("missing", share.toBuySkeins());
        write(share.missing(), json);
        json.writeArrayFieldStart("from-stash");
        for (StashShare.Drawn drawn : share.drawn()) {
            json.writeStartObject();
            if (drawn.lot().isPresent()) {
                json.writeStringField("lot", drawn.lot().get());
            }
            json.writeNumberField("skeins", drawn.skeins());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(String name, List<StitchKind> kinds, ToIntFunction<StitchKind> number, JsonGenerator json)
            throws IOException {
        json.writeObjectFieldStart(name);
        for (StitchKind kind : kinds) {
            json.writeNumberField(kind.word(), number.applyAsInt(kind));
        }
        json.writeEndObject();
    }

    /** What has to be asked for by its lot; nothing where any lot will do. */
    private static void write(Missing missing, JsonGenerator json) throws IOException {
        if (missing.asked().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("ask-for-lots");
        for (Missing.OfLot one : missing.asked()) {
            json.writeStartObject();
            json.writeStringField("lot", one.lot().orElseThrow());
            json.writeNumberField("missing", one.skeins());
            json.writeNumberField("buy", one.whole());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(String name, Estimate skeins, JsonGenerator json) throws IOException {
        json.writeNumberField(name + "-low", skeins.low());
        json.writeNumberField(name + "-likely", skeins.likely());
        json.writeNumberField(name + "-high", skeins.high());
    }

    private static void write(Optional<Price> cost, JsonGenerator json) throws IOException {
        if (cost.isPresent()) {
            json.writeNumberField("cost", cost.get().amount());
            json.writeStringField("currency", cost.get().currency());
        }
    }

    private static void write(String name, List<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
