package kitleaf.basket.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaGuardTests {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "=1+1  | '=1+1", "+ | '+", "-5 | '-5", "@x | '@x", "＝1 | '＝1", "'=x | ''=x", "''@ | '''@",
        "x=1 | x=1", "'x | 'x", "' | '", "7 | 7", "x;=1 | x;'=1", "x,-1;+2 | x,'-1;'+2", "x; \"=1 | x;' \"=1", "; =; | ;' =;", "a ;'=b | a ;''=b", "a b-c | a b-c"})
    void aCellIsGuardedWhereItMustBeAndComesBackAsItWas(String cell, String written) {
        assertEquals(written, FormulaGuard.guarded(cell));
        assertEquals(cell, FormulaGuard.unguarded(written));
    }

    @Test
    void whatFollowsATabOrALinesEndIsGuardedToo() {
        assertEquals("a\t'=1\r\n'@b\n'+\r'-", FormulaGuard.guarded("a\t=1\r\n@b\n+\r-"));
        assertEquals("a\t=1\r\n@b\n+\r-", FormulaGuard.unguarded("a\t'=1\r\n'@b\n'+\r'-"));
    }

    /** A spreadsheet that parts cells at another sign, reads quotes or does not, and passes over blanks. */
    @Property(tries = 2000)
    void whereverACellIsPartedNoneBeginsAFormulaAndAllComeBack(@ForAll @CharRange(from = ' ', to = '@') @Chars({'\t', '\r', '\n', 'a', '\uFF1D'}) String cell) {
        String written = FormulaGuard.guarded(cell);
        assertEquals(cell, FormulaGuard.unguarded(written));
        for (String part : written.split("[,;\t\r\n]")) {
            assertFalse(part.matches("[ \"]*[=+\\-@\uFF1D].*"), written);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"=1+1", "+", "'x", "x"})
    void aCellWrittenByHandIsReadAsItStands(String cell) {
        assertEquals(cell, FormulaGuard.unguarded(cell));
    }
}
