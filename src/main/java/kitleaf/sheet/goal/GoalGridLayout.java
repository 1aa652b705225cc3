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
    private static final double FOOT_MM = 24;
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
        boolean upright = WallTiles.count(wallWidthMm, wallHeightMm, lyingHeightMm, lyingWidthMm, WallTiles.Around.ORDINARY)
                < WallTiles.count(wallWidthMm, wallHeightMm, lyingWidthMm, lyingHeightMm, WallTiles.Around.ORDINARY);
        double tileWidthMm = upright ? lyingHeightMm : lyingWidthMm;
        double tileHeightMm = upright ? lyingWidthMm : lyingHeightMm;

        double scale = Math.max(1, Math.min(wallWidthMm, wallHeightMm) / A4_SHORT_MM);
        Box area = new Box(INSET_MM, TOP_MM, wallWidthMm / scale - 2 * INSET_MM,
                (whole ? (wallHeightMm - FOOT_MM - 2) / scale : wallHeightMm / scale - INSET_MM) - TOP_MM);
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry)).toList();
        int columns = Math.min(goals.columns(), most(area.widthMm(), LEAST_CARD_WIDTH_MM));
        double cardWidthMm = (area.widthMm() - (columns - 1) * GoalCards.GAP_MM) / columns;
        double leastHeightMm = cardWidthMm >= GoalCards.WIDE_MM ? LEAST_CARD_HEIGHT_MM : LEAST_NARROW_HEIGHT_MM;
        int rows = Math.min(Math.max(goals.rows(), (entries.size() + goals.columns() - 1) / goals.columns()), most(area.heightMm(), leastHeightMm));
        int tilesPerWall = whole ? 1 : WallTiles.count(wallWidthMm, wallHeightMm, tileWidthMm, tileHeightMm, WallTiles.Around.ORDINARY);
        int wallCount = (entries.size() + columns * rows - 1) / (columns * rows);
        YearStripLayout strips = new YearStripLayout(year, words, says, settings, lyingWidthMm, lyingHeightMm, goals.choose());
        List<YearStripLayout.Page> stripPages = strips.pages();
        int count = wallCount * tilesPerWall + stripPages.size();

        Frames frames = Frames.asOf(year.asOf(), reckoning.basket(), settings, words, words.say("goal.name"));
        List<GoalWall> walls = new ArrayList<>();
        for (int wall = 0; wall < wallCount; wall++) {
            int before = wall * tilesPerWall;
            List<GoalEntry> here = entries.subList(wall * columns * rows, Math.min(entries.size(), (wall + 1) * columns * rows));
            List<GoalCard> cards = GoalCards.place(here, columns, rows, area);
            List<TiledPage> tiles = whole
                    ? List.of(new TiledPage(frames.of(wallWidthMm, wallHeightMm, before + 1, count), new Box(0, 0, wallWidthMm, wallHeightMm), 0, 0, 0, 0, 1, 1, List.of()))
                    : WallTiles.of(wallWidthMm, wallHeightMm, tileWidthMm, tileHeightMm, words, settings.type(), WallTiles.Around.ORDINARY, WallTiles.Free.between(cards, scale),
                            tile -> frames.of(tileWidthMm, tileHeightMm, before + tile + 1, count));
            walls.add(new GoalWall(scale, wallWidthMm / scale, INSET_MM, says.title(entries.size()), Integer.toString(year.year()), says.pace(), null,
                    cards, tiles));
        }
        List<YearStrip> strip = new ArrayList<>();
        for (YearStripLayout.Page page : stripPages) {
            strip.add(strips.strip(page, frames.of(lyingWidthMm, lyingHeightMm, wallCount * tilesPerWall + strip.size() + 1, count)));
        }
        return new Sheet(SheetKind.GOAL_GRID, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("goal.name"),
                "subject", words.say("goal.subject"),
                "language", settings.language().toLanguageTag(),
                "walls", walls,
                "strips", strip,
                "words", List.of()));
    }

    static int most(double roomMm, double leastMm) {
        return Math.max(1, (int) Math.floor((roomMm + GoalCards.GAP_MM) / (leastMm + GoalCards.GAP_MM)));
    }
}
