package kitleaf.command;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.Basket;
import kitleaf.press.MarkupException;
import kitleaf.press.Press;
import kitleaf.press.PressReport;
import kitleaf.sheet.Sheet;
import kitleaf.sheet.SheetKind;
import kitleaf.sheet.Sheets;
import kitleaf.sheet.TemplateFault;
import kitleaf.sheet.Templates;
import kitleaf.sizing.Reckoning;

/** The whole way of the data: read, reckon, lay out, press. */
final class Pipeline {

    private final PrintJob job;

    Pipeline(PrintJob job) {
        this.job = job;
    }

    /** Prints the job's sheets; either all of them are replaced or none. */
    List<Printed> run() throws Failure {
        Basket basket = job.source().read();
        job.clock().mark("read");
        Reckoning reckoning = Reckoning.of(basket, job.planTime());
        job.clock().mark("reckon");
        List<Printed> printed = new ArrayList<>();
        try (OutFolder out = OutFolder.open(job.out())) {
            Templates templates = job.openTemplates();
            for (SheetKind kind : job.kinds(basket)) {
                Sheet sheet = Sheets.layOut(kind, reckoning, job.settings(basket));
                job.clock().mark("lay out");
                if (sheet.pages() > 0) {
                    printed.add(new Printed(out.path(fileName(kind)), press(sheet, basket, templates, out), PlanNotes.of(kind, reckoning)));
                }
                job.clock().mark("press");
            }
            if (job.kinds().contains(SheetKind.BUY_LIST)) {
                printed.addAll(BuyListCsv.write(reckoning, out));
            }
            out.replaceAll();
        } catch (TemplateFault e) {
            throw new Failure(Exit.BASKET_HAS_PROBLEMS, e.getMessage());
        } catch (IOException e) {
            throw OutFolder.couldNotWrite(job.out(), e);
        }
        return printed;
    }

    private PressReport press(Sheet sheet, Basket basket, Templates templates, OutFolder out) throws IOException, Failure {
        try (Reader markup = templates.open(sheet); Draft draft = out.draft(fileName(sheet.kind()))) {
            return Press.press(markup, draft.stream(), job.pressSettings(basket, sheet));
        } catch (MarkupException e) {
            throw new Failure(Exit.BASKET_HAS_PROBLEMS,
                    templates.locate(sheet, e.characterOffset()).orElse(sheet.kind().id()) + ": " + e.getMessage());
        }
    }

    private static String fileName(SheetKind kind) {
        return kind.id() + ".pdf";
    }
}
