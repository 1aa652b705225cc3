package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaGuardTests {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "=1+1  | '=1+1", "+ | '+", "-5 | '-5", "@x | '@x", "＝1 | '＝1", "'=x | ''=x", "''@ | '''@",
        "x=1 | x=1", "'x | 'x", "' | '", "7 | 7"})
    void aCellIsGuardedWhereItMustBeAndComesBackAsItWas(String cell, String written) {
        assertEquals(written, FormulaGuard.guarded(cell));
        assertEquals(cell, FormulaGuard.unguarded(written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"=1+1", "+", "'x", "x"})
    void aCellWrittenByHandIsReadAsItStands(String cell) {
        assertEquals(cell, FormulaGuard.unguarded(cell));
    }
}
