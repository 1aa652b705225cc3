package kitleaf.basket.yaml;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.ObjectCodec;
import com.fasterxml.jackson.core.io.IOContext;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.Reader;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.ScalarEvent;

/** A YAML parser to which every value is text. Jackson's own tries patterns of numbers, dates and truths on each, and nobody asks. */
final class TextParser extends YAMLParser {

    private TextParser(IOContext context, int features, int yamlFeatures, LoaderOptions options, ObjectCodec codec, Reader text) {
        super(context, features, yamlFeatures, options, codec, text);
    }

    /** Makes such parsers. */
    static final class Factory extends YAMLFactory {

        private static final long serialVersionUID = 1;

        @Override
        protected YAMLParser _createParser(Reader text, IOContext context) {
            return new TextParser(context, _parserFeatures, _yamlParserFeatures, _loaderOptions, _objectCodec, text);
        }
    }

    /** Only where nothing was written there is no text: its place is that of what comes next, which may be a quote. */
    @Override
    protected JsonToken _decodeScalar(ScalarEvent scalar) {
        _textValue = scalar.getValue();
        _cleanedTextValue = null;
        return scalar.isPlain() && _textValue.isEmpty() ? JsonToken.VALUE_NULL : JsonToken.VALUE_STRING;
    }
}
