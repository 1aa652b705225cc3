package kitleaf.command.printing;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.Basket;
import kitleaf.command.files.Draft;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.ProgressLine;
import kitleaf.press.Press;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.type.Typefaces;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.template.TemplateFault;
import kitleaf.sheet.template.Templates;
import kitleaf.sizing.Reckoning;
import kitleaf.words.Said;

/** The whole way of the data: read, reckon, lay out, press. */
public final class Pipeline {

    private final PrintJob job;

    public Pipeline(PrintJob job) {
        this.job = job;
    }

    /** Prints the job's sheets; either all of them are replaced or none. */
    public List<Printed> run() {
        Ahead ahead = Ahead.of(job);
        job.progress().step("progress.reading", job.from().toString());
        Basket basket = seen(job.basket().get());
        job.clock().mark("read");
        job.progress().step("progress.reckoning");
        Reckoning reckoning = Reckoning.of(basket);
        job.clock().mark("reckon");
        List<Printed> printed = new ArrayList<>();
        List<SheetKind> kinds = job.kinds(basket);
        job.rooms().accept(reckoning, kinds);
        try (OutFolder out = OutFolder.open(job.out(), job.progress()::tell);
                SheetsAhead sheets = SheetsAhead.of(job, reckoning, ahead.templates().in(basket.language()), kinds)) {
            // There is nothing to press yet, and templates are still being read.
            Typefaces.read();
            for (SheetKind kind : kinds) {
                job.progress().step("progress.laying-out", kind.id());
                SheetsAhead.Begun begun = sheets.next();
                job.clock().mark("lay out");
                if (begun.sheet().pages() > 0) {
                    printed.addAll(press(begun, basket, ahead.templates(), out));
                }
                out.clear(SheetPictures.of(kind));
                job.clock().mark("press");
            }
            if (job.kinds().contains(SheetKind.BUY_LIST)) {
                printed.addAll(BuyListCsv.write(reckoning, out));
            }
            out.replaceAll();
            job.reckoned().accept(reckoning);
        } catch (TemplateFault e) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> e.told(voice.language()));
        } catch (IOException e) {
            throw OutFolder.couldNotWrite(job.out(), e);
        }
        return printed;
    }

    /** The basket as it was known on the day it is looked from; how much is of later days is told. */
    private Basket seen(Basket whole) {
        return job.asOf().map(day -> seen(whole, day, job.progress())).orElse(whole);
    }

    /** The basket as it was known at the end of a day; how much is of later days is told. */
    public static Basket seen(Basket whole, LocalDate day, ProgressLine progress) {
        long later = whole.factsAfter(day);
        if (later > 0) {
            progress.tell(Said.of("print.left-out", later, day.toString()));
        }
        return whole.asOf(day);
    }

    private List<Printed> press(SheetsAhead.Begun begun, Basket basket, Templates templates, OutFolder out) throws IOException {
        Sheet sheet = begun.sheet();
        List<Printed> printed = new ArrayList<>();
        Draft draft = out.draft(fileName(sheet.kind()));
        try (Reader markup = begun.markup(); draft) {
            printed.add(new Printed(draft.target(), Press.press(markup, draft.stream(), job.pressSettings(basket, sheet))));
        } catch (MarkupException e) {
            String place = templates.locate(sheet, e.characterOffset()).orElse(sheet.kind().id());
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> place + ": " + voice.sayForPress(e.said()));
        }
        if (job.pictures()) {
            printed.add(SheetPictures.draw(sheet.kind(), draft.file(), out, job.progress().ofPictures(sheet.kind().id(), sheet.pages())));
        }
        return printed;
    }

    private static String fileName(SheetKind kind) {
        return kind.id() + ".pdf";
    }
}
