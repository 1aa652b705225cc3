package kitleaf.command.printing;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Price;
import kitleaf.basket.table.TableWriter;
import kitleaf.command.files.Draft;
import kitleaf.command.files.OutFolder;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.StashShare;

/** Writes the buy list as a table for a spreadsheet. */
final class BuyListCsv {

    private static final String NAME = "buy-list.csv";
    private static final int SKEIN_DECIMALS = 3;
    private static final List<String> COLUMNS = List.of("skein", "code", "name", "need-likely", "need-high", "from-stash", "buy", "lot",
            "each", "cost", "currency", "pieces", "ask-for-lot");

    private BuyListCsv() { }

    /** Writes it into the folder as a draft; nothing when no piece names a thread and no cloth is to be bought. */
    static List<Printed> write(Reckoning reckoning, OutFolder out) throws IOException {
        BuyList list = reckoning.threads().buyList();
        List<Purchase> cloth = reckoning.clothPlanToldOf().map(ClothPlan::buy).orElse(List.of());
        if (list.lines().isEmpty() && cloth.isEmpty()) {
            return List.of();
        }
        try (Draft draft = out.draft(NAME);
                Writer writer = new OutputStreamWriter(draft.stream(), StandardCharsets.UTF_8)) {
            TableWriter table = new TableWriter(writer, reckoning.basket().language());
            table.row(COLUMNS);
            for (BuyLine line : list.lines()) {
                boolean unknown = line.shares().isEmpty();
                table.row(List.of(line.putUp().name(), line.code(), line.thread().name().orElse(""),
                        unknown ? "" : number(line.needSkeins().likely(), table), unknown ? "" : number(line.needSkeins().high(), table),
                        number(line.drawnSkeins(), table), Long.toString(line.buy()), String.join(" ", line.lots()),
                        amount(line.each(), table), amount(line.cost(), table), line.each().map(Price::currency).orElse(""),
                        Stream.concat(line.shares().stream().map(StashShare::piece), line.unknown().stream()).sorted()
                                .collect(Collectors.joining(" ")),
                        line.missing().asked().stream().map(one -> one.lot().orElseThrow() + ": " + one.whole())
                                .collect(Collectors.joining("; "))));
            }
            for (Purchase cut : cloth) {
                table.row(List.of("", cut.cloth().orElse(""), cut.cut().name(), "", "", "", Integer.toString(cut.number()), "",
                        amount(cut.cut().price(), table), amount(cut.cost(), table), cut.cut().price().map(Price::currency).orElse(""), "",
                        ""));
            }
        }
        return List.of(new Printed(out.path(NAME)));
    }

    private static String number(double skeins, TableWriter table) {
        return table.number(BigDecimal.valueOf(skeins).setScale(SKEIN_DECIMALS, RoundingMode.HALF_UP).toPlainString());
    }

    private static String amount(Optional<Price> price, TableWriter table) {
        return price.map(known -> table.number(known.amount().toPlainString())).orElse("");
    }
}
