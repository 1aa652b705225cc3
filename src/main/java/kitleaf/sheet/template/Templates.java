package kitleaf.sheet.template;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.ArithmeticEngine;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.words.SheetWords;
import kitleaf.words.Said;
import kitleaf.words.Words;

/**
 * Runs templates over laid-out sheets and gives their page markup as a stream. Templates come from the
 * user's own folder where she has one, file by file, else from the program.
 */
public final class Templates {

    private static final String SUFFIX = ".ftlx";
    private static final String STOPPABLE = "kitleaf.stoppable";

    private final Configuration configuration;
    private final Words words;
    private final boolean hasOwn;

    /**
     * Opens the templates.
     *
     * @param own the user's own folder, read before the built-in ones
     * @throws IOException when that folder cannot be read
     */
    public Templates(Optional<Path> own, Locale language) throws IOException {
        hasOwn = own.isPresent();
        configuration = new Stoppable();
        TemplateLoader builtIn = new ClassTemplateLoader(Templates.class, "/kitleaf/templates/");
        configuration.setTemplateLoader(own.isEmpty() ? builtIn
                : new MultiTemplateLoader(new TemplateLoader[] {new OwnTemplates(own.get()), builtIn}));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setObjectWrapper(new ViewWrapper());
        configuration.setLocale(Locale.ROOT);
        configuration.setLocalizedLookup(false);
        configuration.setCustomNumberFormats(Map.of(MarkupNumbers.NAME, new MarkupNumbers()));
        configuration.setNumberFormat("@" + MarkupNumbers.NAME);
        // The other one turns every double into a decimal and back.
        configuration.setArithmeticEngine(ArithmeticEngine.CONSERVATIVE_ENGINE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        // What a template tries and recovers from is its own affair.
        configuration.setAttemptExceptionReporter((failure, environment) -> { });
        configuration.setWrapUncheckedExceptions(true);
        // A template describes a page; it has no business with classes.
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        words = SheetWords.in(language);
    }

    private Templates(Templates other, Locale language) {
        configuration = other.configuration;
        hasOwn = other.hasOwn;
        words = SheetWords.in(language);
    }

    /** The same templates in another language. */
    public Templates in(Locale language) {
        return new Templates(this, language);
    }

    /**
     * Reads the templates of these sheets and what they share, so that they are there when they are needed. Only the program's
     * own: of a template that cannot be read, the next who asks is told no more than that.
     */
    public void read(List<SheetKind> kinds) throws IOException {
        if (!hasOwn) {
            configuration.getTemplate("parts" + SUFFIX);
            for (SheetKind kind : kinds) {
                configuration.getTemplate(kind.id() + SUFFIX);
            }
        }
    }

    /**
     * The page markup of a sheet, written by its template while it is read. Reading throws {@link TemplateFault}
     * where the template fails; closing the reader ends the template.
     */
    public Reader open(Sheet sheet) {
        return MarkupStream.of(fileName(sheet), out -> run(sheet, out), bounds(sheet));
    }

    /**
     * The template and line that wrote one character of a sheet's markup, such as {@code cut-sheets.ftlx:12}.
     *
     * @param offset the character, from 0
     */
    public Optional<String> locate(Sheet sheet, long offset) {
        try (Reader passed = MarkupStream.of(fileName(sheet), out -> run(sheet, new LocatingWriter(out, offset)), bounds(sheet))) {
            passed.transferTo(Writer.nullWriter());
        } catch (LocatingWriter.Found found) {
            return Optional.of(found.place());
        } catch (IOException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private void run(Sheet sheet, Writer out) throws IOException {
        String name = fileName(sheet);
        try {
            Map<String, Object> model = new HashMap<>(sheet.model());
            model.put("say", (TemplateMethodModelEx) arguments -> say(arguments));
            Template template = configuration.getTemplate(name);
            template.process(model, out);
        } catch (StackOverflowError e) {
            throw new TemplateFault(name, Said.of("template.deep"));
        } catch (OutOfMemoryError e) {
            if (!hasOwn) {
                throw e;
            }
            throw new TemplateFault(name, Said.of("template.memory"));
        } catch (ParseException e) {
            throw fault(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), theirs(e.getEditorMessage()));
        } catch (TemplateNotFoundException e) {
            throw new TemplateFault(e.getTemplateName(), Said.of("template.none"));
        } catch (TemplateException e) {
            if (e.getCause() instanceof TemplateFault inner) {
                throw inner;
            }
            Integer line = e.getLineNumber();
            Integer column = e.getColumnNumber();
            throw fault(e.getTemplateSourceName() == null ? name : e.getTemplateSourceName(), line == null ? 1 : line,
                    column == null ? 1 : column, e instanceof TemplateSlip slip ? slip.said() : theirs(e.getMessageWithoutStackTop()));
        }
    }

    private Bounds bounds(Sheet sheet) {
        return hasOwn ? Bounds.of(sheet.pages()) : Bounds.OURS;
    }

    /** Whether all that templates began has ended; what builds a list or a text in one step cannot be stopped in it. */
    public static boolean allEnded() throws InterruptedException {
        return MarkupStream.allEnded();
    }

    /** Every template it gives, be it included or imported, can be stopped in a loop that writes nothing. */
    private static final class Stoppable extends Configuration {

        private Stoppable() {
            super(VERSION_2_3_34);
        }

        @Override
        public Template getTemplate(String name, Locale locale, Object lookup, String encoding, boolean parsed,
                boolean ignoreMissing) throws IOException {
            Template template = super.getTemplate(name, locale, lookup, encoding, parsed, ignoreMissing);
            if (template != null) {
                makeStoppable(template);
            }
            return template;
        }

        /** Once a template, since each time adds the same checks again. */
        private static void makeStoppable(Template template) {
            synchronized (template) {
                if (template.getCustomAttribute(STOPPABLE) == null) {
                    _CoreAPI.addThreadInterruptedChecks(template);
                    template.setCustomAttribute(STOPPABLE, true);
                }
            }
        }
    }

    private static String fileName(Sheet sheet) {
        return sheet.kind().id() + SUFFIX;
    }

    private Object say(List<?> arguments) throws TemplateModelException {
        try {
            Object[] slots = arguments.subList(1, arguments.size()).toArray();
            return words.say(String.valueOf(arguments.get(0)), slots);
        } catch (MissingResourceException e) {
            throw new TemplateSlip("call.no-phrase", e.getKey());
        }
    }

    private static TemplateFault fault(String name, int line, int column, Said said) {
        return new TemplateFault(name + ":" + line + ":" + column, said);
    }

    /** What FreeMarker says, in its own words. */
    private static Said theirs(String message) {
        if (message == null) {
            return Said.of("template.failed");
        }
        // It ends its messages with long advice for programmers; the first paragraph says what is wrong.
        String first = message.strip().split("\\n\\s*(\\n|----)")[0].replaceAll("\\s+", " ")
                // Where it looked is the machine's business.
                .replaceFirst(" The name was interpreted by this TemplateLoader.*", "")
                // And so is what it is made of.
                .replaceAll(" ?\\((?:wrapper|wrapped class|extended_hash\\+?[^)]*wrapper): [^)]*\\)", "")
                        .replaceAll("\\b(?:[a-z][A-Za-z0-9_]*\\.)+[A-Z]\\w*(?:\\$\\w+)*", "...");
        return Said.of("template.freemarker", first);
    }
}
