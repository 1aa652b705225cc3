package kitleaf.command;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.FormulaGuard;
import kitleaf.basket.Price;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.StashShare;

/** Writes the buy list as CSV by RFC 4180: a header, CRLF line ends, quotes where they are needed, and no cell a spreadsheet takes for a formula. */
final class BuyListCsv {

    private static final String NAME = "buy-list.csv";
    private static final int SKEIN_DECIMALS = 3;

    private BuyListCsv() { }

    /** Writes it into the folder as a draft; nothing when no piece names a thread and no cloth is to be bought. */
    static List<Printed> write(Reckoning reckoning, OutFolder out) throws IOException {
        BuyList list = reckoning.threads().buyList();
        List<Purchase> cloth = reckoning.clothPlanToldOf().map(ClothPlan::buy).orElse(List.of());
        if (list.lines().isEmpty() && cloth.isEmpty()) {
            return List.of();
        }
        try (Draft draft = out.draft(NAME);
                Writer writer = new OutputStreamWriter(draft.stream(), StandardCharsets.UTF_8);
                CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(writer)) {
            csv.writeRecord("skein", "code", "name", "need-likely", "need-high", "from-stash", "buy", "lot", "each", "cost", "currency", "pieces",
                    "ask-for-lot");
            for (BuyLine line : list.lines()) {
                csv.writeRecord(FormulaGuard.guarded(line.putUp().name()), FormulaGuard.guarded(line.code()), FormulaGuard.guarded(line.thread().name().orElse("")),
                        line.shares().isEmpty() ? "" : number(line.needSkeins().likely()),
                        line.shares().isEmpty() ? "" : number(line.needSkeins().high()),
                        number(line.drawnSkeins()), Long.toString(line.buy()), FormulaGuard.guarded(String.join(" ", line.lots())),
                        line.each().map(price -> price.amount().toPlainString()).orElse(""),
                        line.cost().map(price -> price.amount().toPlainString()).orElse(""),
                        line.each().map(Price::currency).orElse(""),
                        FormulaGuard.guarded(Stream.concat(line.shares().stream().map(StashShare::piece), line.unknown().stream()).sorted().collect(Collectors.joining(" "))),
                        FormulaGuard.guarded(line.missing().asked().stream().map(one -> one.whole() + " of " + one.lot().orElseThrow())
                                .collect(Collectors.joining("; "))));
            }
            for (Purchase cut : cloth) {
                csv.writeRecord("", FormulaGuard.guarded(cut.cloth().orElse("")), FormulaGuard.guarded(cut.cut().name()), "", "", "", Integer.toString(cut.number()), "",
                        cut.cut().price().map(price -> price.amount().toPlainString()).orElse(""),
                        cut.cost().map(price -> price.amount().toPlainString()).orElse(""),
                        cut.cut().price().map(Price::currency).orElse(""), "", "");
            }
        }
        return List.of(new Printed(out.path(NAME)));
    }

    private static String number(double skeins) {
        return BigDecimal.valueOf(skeins).setScale(SKEIN_DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }
}
