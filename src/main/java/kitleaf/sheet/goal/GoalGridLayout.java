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

    /** The head of a wall is drawn as on A4 and enlarged by the shorter side. */
    private static final double A4_SHORT_MM = 210;
    /** Around the line below it. */
    private static final double STITCH_MM = 4;
    private static final double GAP_MM = 4;
    private static final double WALL_GAP_MM = 8;
    /** What joins say stands in the strips that are cut off or slid under: between their line and the printer's margin. */
    private static final double PRINTER_MM = 8;
    private static final double BESIDE_JOIN_MM = 1.5;

    private final SheetSettings settings;
    private final Paper lying;
    private final Paper upright;
    private final Words words;
    private final Goals goals;
    private final YearReckoning year;
    private final GoalWords says;
    private final Frames frames;

    private GoalGridLayout(Reckoning reckoning, SheetSettings asked, Goals goals) {
        Paper paper = asked.paper();
        double longMm = Math.max(paper.widthMm(), paper.heightMm());
        double shortMm = Math.min(paper.widthMm(), paper.heightMm());
        this.lying = new Paper(paper.name(), longMm, shortMm);
        this.upright = new Paper(paper.name(), shortMm, longMm);
        this.settings = new SheetSettings(asked.type().lies() ? lying : upright, asked.units(), asked.type(), asked.skip(), asked.asOf(), asked.span(),
                asked.language(), asked.ruler());
        this.words = SheetWords.in(settings.language());
        this.goals = goals;
        LocalDate asOf = settings.asOf().or(reckoning.basket()::latest).orElse(LocalDate.of(goals.year(), 1, 1));
        this.year = reckoning.year(asOf).orElseThrow();
        this.says = new GoalWords(words, new Figures(settings.units(), words), year);
        this.frames = Frames.asOf(year.asOf(), reckoning.basket(), settings, words, words.say("goal.name"));
    }

    /** The goal grid and the strip of weeks; no pages where the basket has no goals. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Optional<Goals> goals = reckoning.basket().goals();
        return goals.map(it -> new GoalGridLayout(reckoning, settings, it).layOut())
                .orElseGet(() -> new Sheet(SheetKind.GOAL_GRID, 0, Map.of()));
    }

    private Sheet layOut() {
        List<GoalEntry> entries = Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry))
                .toList();
        List<String> notes = new ArrayList<>(says.notes(goals.choose()));
        List<GoalPage> pages = entries.isEmpty() ? List.of() : pages(entries, notes);
        return frames.flowing(SheetKind.GOAL_GRID, pages.size() + 1, words.say("goal.subject"), Map.of(
                "pages", pages,
                "strip", YearStrip.of(year, settings.language(), says::day),
                "stripTitle", words.say("strip.title", year.year()),
                "fit", says.fit(),
                "notes", notes));
    }

    private List<GoalPage> pages(List<GoalEntry> entries, List<String> notes) {
        List<Paper> papers = settings.type().lies() ? List.of(lying, upright) : List.of(upright, lying);
        List<Paper> walls = goals.wall().map(List::of).orElse(papers);
        boolean whole = papers.stream().anyMatch(it -> holds(it, walls.get(0)));
        double gapMm = goals.wall().isPresent() ? WALL_GAP_MM : GAP_MM;
        double scale = Math.max(1, Math.min(walls.get(0).widthMm(), walls.get(0).heightMm()) / A4_SHORT_MM);
        TypeScale type = settings.type().before(scale);
        double headMm = scale * (type.lineMm(type.title()) + STITCH_MM);
        double footMm = footMm(upright);
        CardRoom room = new CardRoom(entries, settings.type(), settings.ruler(), words);
        GoalGrid.Walls free = new GoalGrid.Walls(walls, 2 * Frames.MARGIN_MM, Frames.MARGIN_MM + headMm + gapMm / 2,
                (whole ? footMm : Frames.MARGIN_MM) + gapMm / 2, gapMm);
        Optional<WallTiles> asked = goals.cards().flatMap(cards -> GoalGrid.asked(cards, free, room))
                .map(grid -> tiles(grid, whole, room, headMm, gapMm, papers)).filter(it -> it.grid().scale() > 0);
        WallTiles tiles = asked.orElseGet(() -> tiles(GoalGrid.best(free, room), whole, room, headMm, gapMm, papers));
        if (asked.isEmpty()) {
            goals.cards().ifPresent(cards -> notes.add(0, words.say("strip.cards", cards.columns(), cards.rows(), tiles.grid().columns(),
                    tiles.grid().rows())));
        }
        GoalPage.Head head = new GoalPage.Head(new Box(0, 0, 0, 0), says.title(entries.size()), Integer.toString(year.year()), scale, type);
        List<GoalPage> pages = new ArrayList<>();
        int each = tiles.grid().columns() * tiles.grid().rows();
        for (int from = 0; from < entries.size(); from += each) {
            pages.addAll(tiles.pages(entries.subList(from, Math.min(entries.size(), from + each)), room, head, words));
        }
        return pages;
    }

    private WallTiles tiles(GoalGrid grid, boolean whole, CardRoom room, double headMm, double gapMm, List<Paper> papers) {
        double besideMm = PRINTER_MM + BESIDE_JOIN_MM + TypeScale.mm(settings.type().body());
        List<WallTiles.Sheet> sheets = whole ? List.of(new WallTiles.Sheet(grid.wall().widthMm(), grid.wall().heightMm(),
                Frames.MARGIN_MM - gapMm / 2, Frames.MARGIN_MM, footMm(grid.wall())))
                : papers.stream().map(it -> new WallTiles.Sheet(it.widthMm(), it.heightMm(), besideMm, besideMm,
                        footMm(it) + besideMm - PRINTER_MM)).toList();
        return WallTiles.best(grid, room, headMm, gapMm, sheets);
    }

    private double footMm(Paper paper) {
        return Frames.LOWEST_MM + frames.footMm("", paper.widthMm() - 2 * Frames.MARGIN_MM);
    }

    private static boolean holds(Paper sheet, Paper wall) {
        return wall.widthMm() <= sheet.widthMm() + 1e-6 && wall.heightMm() <= sheet.heightMm() + 1e-6;
    }
}
