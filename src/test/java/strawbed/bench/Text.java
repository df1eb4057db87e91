package strawbed.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Lines of the bench's own text files. */
final class Text {
    private Text() {}

    static List<String> of(String resource) {
        try (InputStream file = Objects.requireNonNull(Text.class.getResourceAsStream(resource), resource)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
