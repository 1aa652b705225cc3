package kitleaf.basket.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.form.LanguageText;

/**
 * Writes a table as CSV by RFC 4180 (CRLF, every cell in quotes), the way her spreadsheet expects it: parted by commas, or by
 * semicolons where the language writes decimals with a comma. No cell is taken for a formula (see {@link FormulaGuard}).
 */
public final class TableWriter {

    private final CsvWriter csv;
    private final boolean decimalComma;

    /** A writer of a table in a language; {@code to} is not closed. */
    public TableWriter(Writer to, Locale language) {
        decimalComma = LanguageText.decimalComma(language);
        csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).quoteStrategy(QuoteStrategies.ALWAYS)
                .fieldSeparator(decimalComma ? Separator.SEMICOLON.sign() : Separator.COMMA.sign()).build(to);
    }

    /**
     * Writes a row.
     *
     * @throws IOException if it cannot be written
     */
    public void row(List<String> cells) throws IOException {
        try {
            csv.writeRecord(cells.stream().map(FormulaGuard::guarded).toList());
            csv.flush();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** A cell for a number that was written with a decimal point. */
    public String number(String written) {
        return decimalComma ? written.replace('.', ',') : written;
    }
}
