package strawbed.exchange.ade;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import strawbed.calf.Told;

/** What an invented farm's record is exported as. */
final class AdeDocument {
    static final AdeSource FARM = new AdeSource("org.example.willowbank");

    private AdeDocument() {}

    static List<WhyNotExported> reasons(Told told) {
        return AdeExport.of(told.herd(), FARM).notExported().stream()
                .map(NotExported::why)
                .toList();
    }

    static Map<String, Object> only(Told told, AdeType type) {
        List<Map<String, Object>> members = members(told, type);
        assertThat(members).hasSize(1);
        return members.get(0);
    }

    static List<Map<String, Object>> members(Told told, AdeType type) {
        return list(parsed(AdeExport.of(told.herd(), FARM).json(type)), "member");
    }

    static Map<String, Object> parsed(String json) {
        try {
            return JSON.std.mapFrom(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked") // a list of objects in JSON
    static List<Map<String, Object>> list(Map<String, Object> object, String field) {
        return (List<Map<String, Object>>) object.getOrDefault(field, List.of());
    }
}
