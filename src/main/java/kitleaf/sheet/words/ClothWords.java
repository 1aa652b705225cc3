package kitleaf.sheet.words;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.OtherCloth;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.Purchase;
import kitleaf.words.Words;

/** Puts cloth into the words and figures that several sheets share. */
public final class ClothWords {

    private final Words words;
    private final Figures figures;

    /** Words and figures of one language; the figures say which units come first. */
    public ClothWords(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    /** Designer, chart and cloth in one line. */
    public String subtitle(Piece piece) {
        StringJoiner line = new StringJoiner(" · ");
        piece.designer().ifPresent(line::add);
        line.add(words.say("cut-sheet.stitches", piece.stitches().wide(), piece.stitches().high()));
        line.add(cloth(piece.cloth()));
        return line.toString();
    }

    /** The cloth in a few words, such as "Sea-mist linen, 36 count over two". */
    public String cloth(Cloth cloth) {
        return cloth(cloth.name(), cloth.kind(), worked(cloth.kind(), cloth.count(), cloth.over()));
    }

    /** Count and over, such as "36 count over two". */
    public String worked(Cloth.Kind kind, Count count, int over) {
        String counted = counted(kind, count);
        return kind == Cloth.Kind.BLOCK ? counted : counted + " " + words.say("over." + over).replace(' ', Figures.NO_BREAK);
    }

    /** "36 count", the figure held to the word after it: a line may end behind both, not between them. */
    private String counted(Cloth.Kind kind, Count count) {
        boolean block = kind == Cloth.Kind.BLOCK;
        String warp = figures.decimal(count.warpPerInch(), 1);
        String said = count.even() ? words.say(block ? "cloth.block" : "cloth.even", warp)
                : words.say(block ? "cloth.uneven-block" : "cloth.uneven", warp, figures.decimal(count.weftPerInch(), 1));
        int blank = said.indexOf(' ');
        return blank < 0 ? said : said.substring(0, blank) + Figures.NO_BREAK + said.substring(blank + 1);
    }

    /** "110 threads", or blocks on block cloth. */
    public String threads(long number, Cloth.Kind kind) {
        String thing = kind == Cloth.Kind.BLOCK ? "cut-sheet.block" : "cut-sheet.thread";
        return words.say(number == 1 ? thing : thing + "s", number).replace(' ', Figures.NO_BREAK);
    }

    /** Kind and count, such as "linen, 36 count". */
    public String weave(Cloth.Kind kind, Count count) {
        return cloth(Optional.empty(), kind, count);
    }

    /** A cloth by name, kind and count, such as "Sea-mist linen, 36 count". */
    public String cloth(Optional<String> name, Cloth.Kind kind, Count count) {
        return cloth(name, kind, counted(kind, count));
    }

    private String cloth(Optional<String> name, Cloth.Kind kind, String counted) {
        String said = words.say("kind." + Words.word(kind));
        return words.say("plan.weave", name.map(it -> named(it, said)).orElse(said), counted);
    }

    /** "Sea-mist linen"; a kind that the name says already, or begins to say at its end, is not said again. */
    private String named(String name, String kind) {
        String low = " " + name.toLowerCase(words.language());
        String first = kind.split(" ")[0];
        return low.contains(kind.toLowerCase(words.language())) ? name
                : low.endsWith(" " + first.toLowerCase(words.language())) ? name + kind.substring(first.length())
                : words.say("cloth.named", name, kind);
    }

    /** What a cloth of a plan is called, numbered where several of it are cut. */
    public String title(PlannedCloth cloth, List<PlannedCloth> all) {
        String name = name(cloth);
        List<PlannedCloth> same = all.stream().filter(other -> name(other).equals(name)).toList();
        if (same.size() == 1) {
            return name;
        }
        int number = 1;
        for (PlannedCloth other : same) {
            // Two cloths may be equal to the last figure; the very one is meant.
            if (other == cloth) {
                break;
            }
            number++;
        }
        return words.say("plan.number-of", name, number, same.size());
    }

    private String name(PlannedCloth cloth) {
        return cloth.bought() ? words.say("plan.cut-of", cloth.name(), cloth.cloth()
                .orElseGet(() -> words.say("kind." + Words.word(cloth.kind())))) : cloth.name();
    }

    /** A size to cut by or to buy, in her units first: {@code 14 1/4 × 18 in (36.2 × 45.8 cm)}, both rounded up. */
    public String cutSize(double widthMm, double heightMm) {
        return words.say("plan.both", figures.cut(widthMm, heightMm), figures.swapped().cut(widthMm, heightMm));
    }

    /** The size of cloth that lies there, in her units first: {@code 14 1/4 × 18 in (36.2 × 45.7 cm)}. */
    public String size(double widthMm, double heightMm) {
        return words.say("plan.both", figures.measured(widthMm, heightMm), figures.swapped().measured(widthMm, heightMm));
    }

    /** The size of a cloth of a plan: measured where it is on hand, rounded up where it is to be bought. */
    public String size(PlannedCloth cloth) {
        return cloth.bought() ? cutSize(cloth.widthMm(), cloth.heightMm()) : size(cloth.widthMm(), cloth.heightMm());
    }

    /** Which cloth it is to be, and how large one is. */
    public String purchased(Purchase purchase) {
        return cloth(purchase.cloth(), purchase.kind(), purchase.count()) + " · " + cutSize(purchase.cut().widthMm(),
                purchase.cut().heightMm());
    }

    /** The row of the what-if table for one cloth. */
    public OtherClothWords other(OtherCloth other) {
        Extent across = other.size().across();
        Extent down = other.size().down();
        String cloth = other.kind() == Cloth.Kind.BLOCK
                ? words.say("kind.block") + " " + counts(other.count())
                : words.say("kind." + Words.word(other.kind())) + " " + counts(other.count()) + " " + words.say("over." + other.over());
        return new OtherClothWords(cloth, figures.decimal(other.stitchesPerInch(), 1),
                Figures.inches(across.finishedMm(), 8) + Figures.TIMES + Figures.inches(down.finishedMm(), 8),
                Figures.cutInches(across.cutMm(), down.cutMm()),
                figures.centimetres(across.finishedMm()) + Figures.TIMES + figures.centimetres(down.finishedMm()),
                figures.cutCentimetres(across.cutMm(), down.cutMm()), other.own());
    }

    private String counts(Count count) {
        String warp = figures.decimal(count.warpPerInch(), 1);
        return count.even() ? warp : warp + Figures.TIMES + figures.decimal(count.weftPerInch(), 1);
    }
}
