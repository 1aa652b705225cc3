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
    private static final double TOP_MM = 31;
    /** Where the wall's title begins and the line below it is. */
    private static final double HEAD_MM = 11.5;
    private static final double HEAD_END_MM = 26.8;
    private static final double FOOT_MM = 24;
    private static final double TITLE_SHARE = 0.5;
    private static final double LEAST_TITLE_PT = 12;
    private static final double PACE_SHARE = 0.45;
    /** From a join to words that keep to one side of it, before scaling: past the joins' own. */
    private static final double BESIDE_JOIN_MM = 3;
    private static final double LEAST_CARD_WIDTH_MM = 55;
    private static final double LEAST_CARD_HEIGHT_MM = 48;
    /** Narrow cards have the box for the day below the rest, not beside it. */
    private static final double LEAST_NARROW_HEIGHT_MM = 56;

    private final Reckoning reckoning;
    private final SheetSettings settings;
    private final Words words;
    private final Goals goals;
    private final YearReckoning year;
    private final GoalWords says;

    private GoalGridLayout(Reckoning reckoning, SheetSettings settings, Goals goals) {
        this.reckoning = reckoning;
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.goals = goals;
        LocalDate asOf = settings.asOf().or(reckoning.basket()::latest).orElse(LocalDate.of(goals.year(), 1, 1));
        this.year = reckoning.year(asOf).orElseThrow();
        this.says = new GoalWords(words, new Figures(settings.units(), words), year);
    }

    /** The goal grid and the strip of weeks; no pages where the basket has no goals. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Optional<Goals> goals = reckoning.basket().goals();
        return goals.isEmpty() ? new Sheet(SheetKind.GOAL_GRID, 0, Map.of()) : new GoalGridLayout(reckoning, settings, goals.get()).any();
    }

    private Sheet any() {
        return settings.type().large() ? new LargeGoals(reckoning, settings, goals, year, words, says).layOut() : layOut();
    }

    private Sheet layOut() {
        Paper paper = settings.paper();
        double lyingWidthMm = Math.max(paper.widthMm(), paper.heightMm());
        double lyingHeightMm = Math.min(paper.widthMm(), paper.heightMm());
        double wallWidthMm = goals.wall().map(Paper::widthMm).orElse(lyingWidthMm);
        double wallHeightMm = goals.wall().map(Paper::heightMm).orElse(lyingHeightMm);
        boolean whole = goals.wall().isEmpty() || WallTiles.whole(wallWidthMm, wallHeightMm, paper.widthMm(), paper.heightMm())
                || WallTiles.whole(wallWidthMm, wallHeightMm, paper.heightMm(), paper.widthMm());
        double scale = Math.max(1, Math.min(wallWidthMm, wallHeightMm) / A4_SHORT_MM);
        Box area = new Box(INSET_MM, TOP_MM, wallWidthMm / scale - 2 * INSET_MM,
                (whole ? (wallHeightMm - FOOT_MM - 2) / scale : wallHeightMm / scale - INSET_MM) - TOP_MM);
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry)).toList();
        int columns = Math.min(goals.columns(), most(area.widthMm(), LEAST_CARD_WIDTH_MM));
        double cardWidthMm = (area.widthMm() - (columns - 1) * GoalCards.GAP_MM) / columns;
        double leastHeightMm = cardWidthMm >= GoalCards.WIDE_MM ? LEAST_CARD_HEIGHT_MM : LEAST_NARROW_HEIGHT_MM;
        int rows = Math.min(Math.max(goals.rows(), (entries.size() + goals.columns() - 1) / goals.columns()), most(area.heightMm(), leastHeightMm));
        int perWall = columns * rows;
        List<List<GoalCard>> grids = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += perWall) {
            grids.add(GoalCards.place(entries.subList(from, Math.min(entries.size(), from + perWall)), columns, rows, area));
        }
        Optional<WallTiles> tiles = whole ? Optional.empty() : Optional.of(tiles(wallWidthMm, wallHeightMm, scale, grids.stream().flatMap(List::stream).toList()));
        int tilesPerWall = tiles.map(WallTiles::count).orElse(1);
        YearStripLayout strips = new YearStripLayout(year, words, says, settings, lyingWidthMm, lyingHeightMm, goals.choose());
        List<YearStripLayout.Page> stripPages = strips.pages();
        int count = grids.size() * tilesPerWall + stripPages.size();

        Frames frames = Frames.asOf(year.asOf(), reckoning.basket(), settings, words, words.say("goal.name"));
        List<GoalWall> walls = new ArrayList<>();
        double widthMm = wallWidthMm / scale;
        String title = says.title(entries.size());
        String pace = says.pace();
        // Where they have room there, the title keeps left of the first join and what stands at the right side right of the last.
        double firstMm = tiles.map(it -> it.firstJoinMm() / scale - INSET_MM - BESIDE_JOIN_MM).orElse(widthMm);
        double lastMm = tiles.map(it -> widthMm - INSET_MM - it.lastJoinMm() / scale - BESIDE_JOIN_MM).orElse(widthMm);
        double titleMm = settings.ruler().widthMm(title, "heading", 500, LEAST_TITLE_PT) <= firstMm ? Math.min(firstMm, widthMm * TITLE_SHARE) : widthMm * TITLE_SHARE;
        boolean onLast = settings.ruler().widthMm(pace, "text", 400, settings.type().table()) > lastMm
                && Stream.of(says.tempo(), says.chance()).allMatch(part -> settings.ruler().widthMm(part, "text", 400, settings.type().least()) <= lastMm);
        double paceMm = onLast ? lastMm : widthMm * PACE_SHARE;
        boolean two = onLast || settings.ruler().widthMm(pace, "text", 400, settings.type().least()) > paceMm;
        for (List<GoalCard> cards : grids) {
            int before = walls.size() * tilesPerWall;
            List<TiledPage> pages = tiles.map(it -> it.pages(words, settings.type(), tile -> frames.of(it.sheet().widthMm(), it.sheet().heightMm(), before + tile + 1, count)))
                    .orElseGet(() -> List.of(TiledPage.whole(frames.of(wallWidthMm, wallHeightMm, before + 1, count))));
            walls.add(new GoalWall(scale, widthMm, INSET_MM, title, titleMm, Integer.toString(year.year()), two ? says.tempo() : pace,
                    paceMm, two ? says.chance() : "",
                    null, cards, pages));
        }
        List<YearStrip> strip = new ArrayList<>();
        for (YearStripLayout.Page page : stripPages) {
            strip.add(strips.strip(page, frames.of(lyingWidthMm, lyingHeightMm, grids.size() * tilesPerWall + strip.size() + 1, count)));
        }
        return new Sheet(SheetKind.GOAL_GRID, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("goal.name"),
                "subject", words.say("goal.subject"),
                "language", settings.language().toLanguageTag(),
                "walls", walls,
                "strips", strip,
                "words", List.of()));
    }

    /** Lying paper is preferred, as the wall's cards lie. */
    private WallTiles tiles(double widthMm, double heightMm, double scale, List<GoalCard> cards) {
        double longMm = Math.max(settings.paper().widthMm(), settings.paper().heightMm());
        double shortMm = Math.min(settings.paper().widthMm(), settings.paper().heightMm());
        return WallTiles.best(WallParts.across(widthMm, scale, INSET_MM, cards), WallParts.down(heightMm, scale, INSET_MM, HEAD_MM, HEAD_END_MM, cards),
                List.of(WallTiles.Sheet.ordinary(longMm, shortMm), WallTiles.Sheet.ordinary(shortMm, longMm)));
    }

    static int most(double roomMm, double leastMm) {
        return Math.max(1, (int) Math.floor((roomMm + GoalCards.GAP_MM) / (leastMm + GoalCards.GAP_MM)));
    }
}
