package kitleaf.sheet.goal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Goals;
import kitleaf.basket.Paper;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.words.Words;

/**
 * Lays out the year on the wall: the grid of goal cards, whole or in tiles, and behind it the strip of weeks. A basket without
 * goals has none.
 */
public final class GoalGridLayout {

    /** The wall chart is drawn as on A4 and enlarged by the shorter side. */
    private static final double A4_SHORT_MM = 210;
    private static final double INSET_MM = 12;
    /** Below the wall's title and what stands beside it, with the line between. */
    private static final double STITCH_MM = 6;
    private static final double TITLE_SHARE = 0.5;
    private static final double PACE_SHARE = 0.45;
    /** Between title and pace, and what their figures may lose. */
    private static final double HEAD_GAP_MM = 5;
    /** From a join to words that keep to one side of it, before scaling: past the joins' own. */
    private static final double BESIDE_JOIN_MM = 3;

    private final Reckoning reckoning;
    private final SheetSettings settings;
    private final Words words;
    private final Goals goals;
    private final YearReckoning year;
    private final GoalWords says;

    private GoalGridLayout(Reckoning reckoning, SheetSettings settings, Goals goals) {
        this.reckoning = reckoning;
        Paper paper = settings.paper();
        double longMm = Math.max(paper.widthMm(), paper.heightMm());
        double shortMm = Math.min(paper.widthMm(), paper.heightMm());
        Paper turned = settings.type().lies() ? new Paper(paper.name(), longMm, shortMm) : new Paper(paper.name(), shortMm, longMm);
        this.settings = new SheetSettings(turned, settings.units(), settings.type(), settings.skip(), settings.asOf(), settings.language(),
                settings.ruler());
        this.words = SheetWords.in(settings.language());
        this.goals = goals;
        LocalDate asOf = settings.asOf().or(reckoning.basket()::latest).orElse(LocalDate.of(goals.year(), 1, 1));
        this.year = reckoning.year(asOf).orElseThrow();
        this.says = new GoalWords(words, new Figures(settings.units(), words), year);
    }

    /** The goal grid and the strip of weeks; no pages where the basket has no goals. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Optional<Goals> goals = reckoning.basket().goals();
        return goals.map(it -> new GoalGridLayout(reckoning, settings, it).layOut())
                .orElseGet(() -> new Sheet(SheetKind.GOAL_GRID, 0, Map.of()));
    }

    private Sheet layOut() {
        Paper paper = settings.paper();
        Paper wall = goals.wall().orElse(paper);
        boolean whole = WallTiles.whole(wall.widthMm(), wall.heightMm(), paper.widthMm(), paper.heightMm())
                || WallTiles.whole(wall.widthMm(), wall.heightMm(), paper.heightMm(), paper.widthMm());
        double scale = Math.max(1, Math.min(wall.widthMm(), wall.heightMm()) / A4_SHORT_MM);
        TypeScale type = settings.type().before(scale);
        double widthMm = wall.widthMm() / scale;
        Frames frames = Frames.asOf(year.asOf(), reckoning.basket(), settings, words, words.say("goal.name"));
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry))
                .toList();
        GoalWall.Head head = head(says.title(entries.size()), widthMm, 0, widthMm, type);
        double footMm = whole ? frames.footMm(wall.widthMm(), "") : INSET_MM * scale;
        double bottomMm = (wall.heightMm() - footMm) / scale;
        Box area = new Box(INSET_MM, head.box().bottomMm(), widthMm - 2 * INSET_MM, bottomMm - head.box().bottomMm());
        int rows = Math.max(goals.rows(), (entries.size() + goals.columns() - 1) / goals.columns());
        List<List<GoalCard>> grids = new GoalCards(entries, goals.columns(), rows, area, type, settings.ruler(), words).pages();
        List<TiledPage> pages = List.of(TiledPage.whole(wall.widthMm(), wall.heightMm()));
        if (!whole) {
            WallTiles tiles = tiles(wall, scale, head, grids.stream().flatMap(List::stream).toList(), frames);
            pages = tiles.pages(words);
            head = head(head.title(), widthMm, tiles.lastJoinMm() / scale, tiles.firstJoinMm() / scale, type);
        }
        List<GoalWall> walls = new ArrayList<>();
        for (List<GoalCard> cards : grids) {
            walls.add(new GoalWall(scale, type, head, cards, pages));
        }
        return frames.flowing(SheetKind.GOAL_GRID, walls.size() * pages.size() + 1, words.say("goal.subject"), Map.of(
                "walls", walls,
                "strip", YearStrip.of(year, settings.language()),
                "stripTitle", words.say("strip.title", year.year()),
                "fit", says.fit(),
                "notes", says.notes(goals.choose())));
    }

    /**
     * The wall's head. Where they have room there, the title keeps left of the first join and what stands at the right side right of
     * the last.
     *
     * @param lastMm the last upright join, 0 for none
     * @param firstMm the first, the wall's width for none
     */
    private GoalWall.Head head(String title, double widthMm, double lastMm, double firstMm, TypeScale type) {
        double innerMm = widthMm - 2 * INSET_MM;
        double leftMm = firstMm - INSET_MM - BESIDE_JOIN_MM;
        double rightMm = Math.min(widthMm - INSET_MM - lastMm - BESIDE_JOIN_MM, widthMm * PACE_SHARE);
        double leastTitleMm = settings.ruler().widthMm(title, "heading", 500, type.floor(12)) + 0.1;
        List<String> one = List.of(says.pace());
        List<String> parts = Stream.of(says.tempo(), says.chance()).filter(part -> !part.isEmpty()).toList();
        boolean clear = widestMm(one, type.table()) <= rightMm || widestMm(parts, type.least()) <= rightMm;
        double paceMm = clear ? rightMm : widthMm * PACE_SHARE;
        List<String> pace = widestMm(one, clear ? type.table() : type.least()) <= paceMm ? one : parts;
        double mostMm = leastTitleMm <= leftMm ? Math.min(leftMm, widthMm * TITLE_SHARE) : widthMm * TITLE_SHARE;
        double titleMm = Math.min(mostMm, innerMm - paceMm - HEAD_GAP_MM);
        boolean beside = leastTitleMm <= titleMm && widestMm(pace, type.least()) <= paceMm;
        double titleHighMm = type.lineMm(type.title());
        double highMm = beside ? Math.max(titleHighMm, type.lineMm(type.subhead()) + parts.size() * type.lineMm(type.table()))
                : titleHighMm + settings.ruler().lines(says.pace(), "text", 400, type.table(), innerMm) * type.lineMm(type.table());
        Box box = new Box(INSET_MM, INSET_MM, innerMm, highMm + STITCH_MM);
        return new GoalWall.Head(box, title, titleMm, Integer.toString(year.year()), pace, paceMm, beside);
    }

    private double widestMm(List<String> texts, double sizePt) {
        return texts.stream().mapToDouble(text -> settings.ruler().widthMm(text, "text", 400, sizePt)).max().orElse(0);
    }

    /** The first paper is preferred: lying, as the wall's cards lie. */
    private WallTiles tiles(Paper wall, double scale, GoalWall.Head head, List<GoalCard> cards, Frames frames) {
        Paper paper = settings.paper();
        return WallTiles.best(WallParts.across(wall.widthMm(), scale, INSET_MM, cards),
                WallParts.down(wall.heightMm(), scale, INSET_MM, head.box().yMm(), head.box().bottomMm() - STITCH_MM / 2, cards),
                List.of(tile(paper.widthMm(), paper.heightMm(), frames), tile(paper.heightMm(), paper.widthMm(), frames)));
    }

    private WallTiles.Sheet tile(double widthMm, double heightMm, Frames frames) {
        return WallTiles.Sheet.of(settings.type(), widthMm, heightMm, frames.footMm(widthMm, words.say("goal.tile", 88, 88, 8, 8)));
    }
}
