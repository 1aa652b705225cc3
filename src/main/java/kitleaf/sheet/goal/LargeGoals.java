package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** How the grid's paper is printed: how large it is, and on what. */
    private record Sheets(double wallWidthMm, double wallHeightMm, boolean whole, double tileWidthMm, double tileHeightMm, WallTiles.Around around) { }

    Sheet layOut() {
        Sheets sheets = sheets();
        double scale = Math.max(1, Math.min(sheets.wallWidthMm(), sheets.wallHeightMm()) / A4_SHORT_MM);
        TypeScale type = scale > 1 ? settings.type().before(scale) : settings.type();
        double gridWidthMm = sheets.wallWidthMm() / scale;
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry)).toList();
        Masthead head = Masthead.of(words.say("strip.eyebrow"), says.title(entries.size()), year.year() + " · " + says.pace(), true,
                gridWidthMm - 2 * INSET_MM, type, settings.ruler(), settings.language());
        double bottomMm = sheets.whole() ? frames.of(sheets.wallWidthMm(), sheets.wallHeightMm(), 0, 0).foot().topMm() / scale
                : sheets.wallHeightMm() / scale - INSET_MM;
        Box area = new Box(INSET_MM, head.bottomMm(), gridWidthMm - 2 * INSET_MM, bottomMm - head.bottomMm());
        LargeGoalCards cards = new LargeGoalCards(entries, goals.columns(), Math.max(goals.rows(), (entries.size() + goals.columns() - 1) / goals.columns()),
                area, type, settings.ruler(), words);
        int wallCount = (entries.size() + cards.perPage() - 1) / cards.perPage();
        int tilesPerWall = sheets.whole() ? 1
                : WallTiles.count(sheets.wallWidthMm(), sheets.wallHeightMm(), sheets.tileWidthMm(), sheets.tileHeightMm(), sheets.around());
        LargeYearStrip strip = new LargeYearStrip(year, words, says, settings, frames, widthMm, heightMm, goals.choose());
        int count = wallCount * tilesPerWall + strip.pages();
        List<GoalWall> walls = new ArrayList<>();
        for (int wall = 0; wall < wallCount; wall++) {
            walls.add(new GoalWall(scale, gridWidthMm, INSET_MM, says.title(entries.size()), Integer.toString(year.year()), says.pace(), head,
                    cards.page(wall), tiles(sheets, WallTiles.Free.between(cards.page(wall), scale), wall * tilesPerWall, count)));
        }
        return new Sheet(SheetKind.GOAL_GRID, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("goal.name"),
                "subject", words.say("goal.subject"),
                "language", settings.language().toLanguageTag(),
                "walls", walls,
                "strips", strip.strips(wallCount * tilesPerWall, count),
                "words", strip.words(wallCount * tilesPerWall, count)));
    }

    private Sheets sheets() {
        if (goals.wall().isEmpty()) {
            return new Sheets(widthMm, heightMm, true, widthMm, heightMm, WallTiles.Around.ORDINARY);
        }
        Paper wall = goals.wall().get();
        boolean whole = WallTiles.whole(wall.widthMm(), wall.heightMm(), widthMm, heightMm) || WallTiles.whole(wall.widthMm(), wall.heightMm(), heightMm, widthMm);
        WallTiles.Around around = WallTiles.Around.large(heightMm - frames.of(widthMm, heightMm, 0, 0).foot().topMm());
        WallTiles.Around lyingAround = WallTiles.Around.large(widthMm - frames.of(heightMm, widthMm, 0, 0).foot().topMm());
        boolean lying = WallTiles.count(wall.widthMm(), wall.heightMm(), heightMm, widthMm, lyingAround)
                < WallTiles.count(wall.widthMm(), wall.heightMm(), widthMm, heightMm, around);
        return new Sheets(wall.widthMm(), wall.heightMm(), whole, lying ? heightMm : widthMm, lying ? widthMm : heightMm, lying ? lyingAround : around);
    }

    private List<TiledPage> tiles(Sheets sheets, WallTiles.Free free, int before, int count) {
        return sheets.whole()
                ? List.of(new TiledPage(frames.of(sheets.wallWidthMm(), sheets.wallHeightMm(), before + 1, count),
                        new Box(0, 0, sheets.wallWidthMm(), sheets.wallHeightMm()), 0, 0, 0, 0, 1, 1, List.of()))
                : WallTiles.of(sheets.wallWidthMm(), sheets.wallHeightMm(), sheets.tileWidthMm(), sheets.tileHeightMm(), words, settings.type(), sheets.around(), free,
                        tile -> frames.of(sheets.tileWidthMm(), sheets.tileHeightMm(), before + tile + 1, count));
    }
}
