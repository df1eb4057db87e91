package strawbed.app;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes one JSON object on a line: numbers plain, without exponent; what is missing as null. */
final class JsonLine {
    private static final JSON WRITER = JSON.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                    .build())
            .enable(JSON.Feature.WRITE_NULL_PROPERTIES)
            .build();

    private JsonLine() {}

    static String of(Map<String, ?> object) {
        try {
            return WRITER.asString(object);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
