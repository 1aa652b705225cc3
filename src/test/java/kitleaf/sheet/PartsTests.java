package kitleaf.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.lang.reflect.RecordComponent;
import java.util.stream.Stream;
import kitleaf.sheet.label.Label;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Parts;
import kitleaf.sheet.page.Swatch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Views that give their components themselves, against the accessors of the record. */
class PartsTests {

    static Stream<Record> views() {
        Box box = new Box(1, 2, 3, 4);
        Swatch swatch = new Swatch("#255b35", "#ffffff", "▲");
        return Stream.of(box, swatch, new Label("K2", "Kelp", "Fog bell", "lines", "ways", "least", "lot 7", swatch, "bookmark"));
    }

    @ParameterizedTest
    @MethodSource("views")
    void aViewGivesEveryComponentByItsName(Record view) throws ReflectiveOperationException {
        for (RecordComponent component : view.getClass().getRecordComponents()) {
            assertEquals(component.getAccessor().invoke(view), ((Parts) view).part(component.getName()), component.getName());
        }
    }

    @ParameterizedTest
    @MethodSource("views")
    void whatIsNoComponentIsNotThere(Record view) {
        assertNull(((Parts) view).part("part"));
        assertNull(((Parts) view).part("rightMm"));
    }
}
