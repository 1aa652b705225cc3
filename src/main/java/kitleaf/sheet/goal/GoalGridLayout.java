package kitleaf.sheet.goal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.CardGrid;
import kitleaf.basket.Goals;
import kitleaf.basket.Paper;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.Misfits;
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
        this.settings = new SheetSettings(asked.type().lies() ? lying : upright, asked.units(), asked.type(), asked.skip(),
                asked.asOf(), asked.span(), asked.all(), asked.language(), asked.ruler());
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

    /** The problem that the grid of cards she asks for has no room, if it has none. */
    public static Optional<Problem> misfit(Reckoning reckoning, SheetSettings settings, Misfits misfits, Misfits.Cause cause) {
        return reckoning.basket().goals().flatMap(goals -> goals.cards().flatMap(cards -> {
            GoalGridLayout layout = new GoalGridLayout(reckoning, settings, goals);
            return layout.misfit(cards).map(fit -> misfits.cards(cards, layout.walls().get(0), fit, cause));
        }));
    }

    private Sheet layOut() {
        List<GoalEntry> entries = entries();
        List<GoalPage> pages = entries.isEmpty() ? List.of() : pages(entries);
        return frames.flowing(SheetKind.GOAL_GRID, pages.size() + 1, words.say("goal.subject"), Map.of(
                "pages", pages,
                "strip", YearStrip.of(year, settings.language(), says::day),
                "stripTitle", words.say("strip.title", year.year()),
                "fit", says.fit(),
                "notes", says.notes(goals)));
    }

    private List<GoalEntry> entries() {
        return Stream.concat(year.finished().stream().map(says::finished), year.chosen().stream().map(says::entry)).toList();
    }

    private List<Paper> papers() {
        return settings.type().lies() ? List.of(lying, upright) : List.of(upright, lying);
    }

    private List<Paper> walls() {
        return goals.wall().map(List::of).orElse(papers());
    }

    private CardRoom room(List<GoalEntry> entries) {
        return new CardRoom(entries, settings.type(), settings.ruler(), words);
    }

    /** The walls her cards lie on, and the head above them. */
    private record Wall(GoalGrid.Walls free, boolean whole, double scale, TypeScale type, double headMm, double gapMm) { }

    private Wall wall() {
        List<Paper> walls = walls();
        boolean whole = papers().stream().anyMatch(it -> holds(it, walls.get(0)));
        double gapMm = goals.wall().isPresent() ? WALL_GAP_MM : GAP_MM;
        double scale = Math.max(1, Math.min(walls.get(0).widthMm(), walls.get(0).heightMm()) / A4_SHORT_MM);
        TypeScale type = settings.type().before(scale);
        double headMm = scale * (type.lineMm(type.title()) + STITCH_MM);
        return new Wall(new GoalGrid.Walls(walls, 2 * Frames.MARGIN_MM, Frames.MARGIN_MM + headMm + gapMm / 2,
                (whole ? footMm(upright) : Frames.MARGIN_MM) + gapMm / 2, gapMm), whole, scale, type, headMm, gapMm);
    }

    /** The grids that have room where one has none, none with more cards; nothing where it has room. */
    private Optional<List<CardGrid>> misfit(CardGrid cards) {
        Wall wall = wall();
        CardRoom room = room(entries());
        return room.entries().isEmpty() || asked(cards, wall, room).isPresent() ? Optional.empty()
                : Optional.of(CardGrid.upTo(cards.number()).filter(it -> asked(it, wall, room).isPresent()).toList());
    }

    private Optional<WallTiles> asked(CardGrid cards, Wall wall, CardRoom room) {
        return GoalGrid.asked(cards, wall.free(), room).map(grid -> tiles(grid, wall, room)).filter(it -> it.grid().scale() > 0);
    }

    private List<GoalPage> pages(List<GoalEntry> entries) {
        CardRoom room = room(entries);
        Wall wall = wall();
        WallTiles tiles = goals.cards().flatMap(cards -> asked(cards, wall, room))
                .orElseGet(() -> tiles(GoalGrid.best(wall.free(), room), wall, room));
        GoalPage.Head head = new GoalPage.Head(new Box(0, 0, 0, 0), says.title(entries.size()), Integer.toString(year.year()), wall.scale(),
                wall.type());
        List<GoalPage> pages = new ArrayList<>();
        int each = tiles.grid().columns() * tiles.grid().rows();
        for (int from = 0; from < entries.size(); from += each) {
            pages.addAll(tiles.pages(entries.subList(from, Math.min(entries.size(), from + each)), room, head, words));
        }
        return pages;
    }

    private WallTiles tiles(GoalGrid grid, Wall wall, CardRoom room) {
        double besideMm = PRINTER_MM + BESIDE_JOIN_MM + TypeScale.mm(settings.type().body());
        List<WallTiles.Sheet> sheets = wall.whole() ? List.of(new WallTiles.Sheet(grid.wall().widthMm(), grid.wall().heightMm(),
                Frames.MARGIN_MM - wall.gapMm() / 2, Frames.MARGIN_MM, footMm(grid.wall())))
                : papers().stream().map(it -> new WallTiles.Sheet(it.widthMm(), it.heightMm(), besideMm, besideMm,
                        footMm(it) + besideMm - PRINTER_MM)).toList();
        return WallTiles.best(grid, room, wall.headMm(), wall.gapMm(), sheets);
    }

    private double footMm(Paper paper) {
        return Frames.LOWEST_MM + frames.footMm("", settings.type().fine(), paper.widthMm() - 2 * Frames.MARGIN_MM);
    }

    private static boolean holds(Paper sheet, Paper wall) {
        return wall.widthMm() <= sheet.widthMm() + 1e-6 && wall.heightMm() <= sheet.heightMm() + 1e-6;
    }
}
