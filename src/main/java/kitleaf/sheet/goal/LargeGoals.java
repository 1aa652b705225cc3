package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Goals;
import kitleaf.basket.Paper;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.words.Words;

/**
 * Lays out the year in large print, on upright paper: fewer cards a page, or all of them on a wall that is large enough, then
 * the strip of weeks and its words.
 */
final class LargeGoals {

    /** A wall chart is drawn as on A4 and enlarged by the shorter side. */
    private static final double A4_SHORT_MM = 210;
    private static final double INSET_MM = Frames.MARGIN_MM;

    private final Reckoning reckoning;
    private final SheetSettings settings;
    private final Goals goals;
    private final YearReckoning year;
    private final Words words;
    private final GoalWords says;
    private final Frames frames;
    private final double widthMm;
    private final double heightMm;

    LargeGoals(Reckoning reckoning, SheetSettings settings, Goals goals, YearReckoning year, Words words, GoalWords says) {
        this.reckoning = reckoning;
        this.settings = settings;
        this.goals = goals;
        this.year = year;
        this.words = words;
        this.says = says;
        this.frames = Frames.asOf(year.asOf(), reckoning.basket(), settings, words, words.say("goal.name"));
        this.widthMm = Math.min(settings.paper().widthMm(), settings.paper().heightMm());
        this.heightMm = Math.max(settings.paper().widthMm(), settings.paper().heightMm());
    }

    Sheet layOut() {
        double wallWidthMm = goals.wall().map(Paper::widthMm).orElse(widthMm);
        double wallHeightMm = goals.wall().map(Paper::heightMm).orElse(heightMm);
        boolean whole = goals.wall().isEmpty() || WallTiles.whole(wallWidthMm, wallHeightMm, widthMm, heightMm) || WallTiles.whole(wallWidthMm, wallHeightMm, heightMm, widthMm);
        double scale = Math.max(1, Math.min(wallWidthMm, wallHeightMm) / A4_SHORT_MM);
        TypeScale type = scale > 1 ? settings.type().before(scale) : settings.type();
        double gridWidthMm = wallWidthMm / scale;
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry)).toList();
        Masthead head = Masthead.of(words.say("strip.eyebrow"), says.title(entries.size()), year.year() + " · " + says.pace(), true,
                gridWidthMm - 2 * INSET_MM, type, settings.ruler(), settings.language());
        double bottomMm = (whole ? frames.of(wallWidthMm, wallHeightMm, 0, 0).foot().topMm() : wallHeightMm) / scale - (whole ? 0 : INSET_MM);
        Box area = new Box(INSET_MM, head.bottomMm(), gridWidthMm - 2 * INSET_MM, bottomMm - head.bottomMm());
        LargeGoalCards cards = new LargeGoalCards(entries, goals.columns(), Math.max(goals.rows(), (entries.size() + goals.columns() - 1) / goals.columns()),
                area, type, settings.ruler(), words);
        int wallCount = (entries.size() + cards.perPage() - 1) / cards.perPage();
        List<List<GoalCard>> grids = IntStream.range(0, wallCount).mapToObj(cards::page).toList();
        Optional<WallTiles> tiles = whole ? Optional.empty() : Optional.of(WallTiles.best(
                WallParts.across(wallWidthMm, scale, INSET_MM, grids.stream().flatMap(List::stream).toList()),
                WallParts.down(wallHeightMm, scale, INSET_MM, INSET_MM, head.stitchMm(), grids.stream().flatMap(List::stream).toList()),
                List.of(sheet(widthMm, heightMm), sheet(heightMm, widthMm))));
        int tilesPerWall = tiles.map(WallTiles::count).orElse(1);
        LargeYearStrip strip = new LargeYearStrip(year, words, says, settings, frames, widthMm, heightMm, goals.choose());
        int count = wallCount * tilesPerWall + strip.pages();
        List<GoalWall> walls = new ArrayList<>();
        for (List<GoalCard> grid : grids) {
            int before = walls.size() * tilesPerWall;
            List<TiledPage> pages = tiles.map(it -> it.pages(words, settings.type(), tile -> frames.of(it.sheet().widthMm(), it.sheet().heightMm(), before + tile + 1, count)))
                    .orElseGet(() -> List.of(TiledPage.whole(frames.of(wallWidthMm, wallHeightMm, before + 1, count))));
            walls.add(new GoalWall(scale, gridWidthMm, INSET_MM, says.title(entries.size()), 0, Integer.toString(year.year()), says.pace(), 0, "", head, grid, pages));
        }
        return new Sheet(SheetKind.GOAL_GRID, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("goal.name"),
                "subject", words.say("goal.subject"),
                "language", settings.language().toLanguageTag(),
                "walls", walls,
                "strips", strip.strips(wallCount * tilesPerWall, count),
                "words", strip.words(wallCount * tilesPerWall, count)));
    }

    private WallTiles.Sheet sheet(double paperWidthMm, double paperHeightMm) {
        return WallTiles.Sheet.large(paperWidthMm, paperHeightMm, paperHeightMm - frames.of(paperWidthMm, paperHeightMm, 0, 0).foot().topMm());
    }
}
