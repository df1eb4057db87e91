package strawbed.testkit;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.keyword.NonValidationKeyword;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/**
 * The JSON schemas of the ICAR Animal Data Exchange standard (Apache-2.0), which lie beside the project and not in it.
 *
 * <p>They are of the dialect of OpenAPI 3.0; what they use of it means the same in draft 7. Each is known by an address
 * that nobody has, so that a reference to a file that is not there fails and nothing is fetched.
 */
public final class AdeSchemas {
    private static final Path FOLDER = Path.of("..", "shared", "standards", "icar-ade");
    private static final String BASE = "https://icar-ade.example/";

    /** Words of OpenAPI that allow null, name a type by a field, or warn of old fields: they refuse nothing that we write. */
    private static final Dialect DIALECT = Dialect.builder(Dialects.getDraft7())
            .keywords(Stream.of("nullable", "discriminator", "deprecated")
                    .map(NonValidationKeyword::new)
                    .toList())
            .build();

    private final SchemaRegistry registry =
            SchemaRegistry.withDefaultDialect(DIALECT, builder -> builder.schemas(AdeSchemas::text));

    private AdeSchemas() {}

    /** The schemas; leaves the test out when there are none here. */
    public static AdeSchemas here() {
        Assumptions.assumeTrue(
                Files.isDirectory(FOLDER),
                "Left out: needs the schemas of the ICAR Animal Data Exchange standard, and there is no " + FOLDER);
        return new AdeSchemas();
    }

    /** What is wrong with this value: what the schema refuses, and fields that it does not name. */
    public List<String> faults(String schema, Object value) {
        try {
            List<String> faults = new ArrayList<>();
            registry
                    .getSchema(SchemaLocation.of(BASE + schema))
                    .validate(
                            JSON.std.asString(value),
                            InputFormat.JSON,
                            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                    .stream()
                    .map(Error::toString)
                    .forEach(faults::add);
            unnamed(new Place(schema, read(schema)), value, "$", faults);
            return faults;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of one of the standard's lists. */
    public List<String> words(String list) {
        return strings(read("enums/" + list + ".json").get("enum"));
    }

    /** Every reference of every schema, as the file that it names. */
    public List<Path> references() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            List<Path> references = new ArrayList<>();
            for (Path file : files.filter(each -> each.toString().endsWith(".json"))
                    .sorted()
                    .toList()) {
                references(JSON.std.mapFrom(Files.readString(file)), file, references);
            }
            return references;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void references(@Nullable Object part, Path file, List<Path> references) {
        if (part instanceof Map<?, ?> map) {
            if (map.get("$ref") instanceof String reference) {
                references.add(file.resolveSibling(reference).normalize());
            }
            map.values().forEach(inner -> references(inner, file, references));
        } else if (part instanceof List<?> list) {
            list.forEach(inner -> references(inner, file, references));
        }
    }

    /** A schema, or a part of one, with the file it stands in. */
    private record Place(String file, Map<?, ?> schema) {
        Place to(Object part) {
            return new Place(file, (Map<?, ?>) part);
        }
    }

    /** The standard allows further fields everywhere, so that a misspelt one is valid; here it is a fault. */
    private static void unnamed(Place place, @Nullable Object value, String at, List<String> faults) {
        Map<String, Place> named = new LinkedHashMap<>();
        collect(place, named);
        if (value instanceof Map<?, ?> object) {
            object.forEach((name, inner) -> {
                Place field = named.get(String.valueOf(name));
                if (field == null) {
                    faults.add(at + "." + name + ": the standard names no such field");
                } else {
                    unnamed(field, inner, at + "." + name, faults);
                }
            });
        } else if (value instanceof List<?> list) {
            Place items = named.get("items of the list");
            for (int i = 0; items != null && i < list.size(); i++) {
                unnamed(items, list.get(i), at + "[" + i + "]", faults);
            }
        }
    }

    private static void collect(Place place, Map<String, Place> named) {
        if (place.schema().get("$ref") instanceof String reference) {
            String file =
                    Path.of(place.file()).resolveSibling(reference).normalize().toString();
            collect(new Place(file, read(file)), named);
        }
        if (place.schema().get("allOf") instanceof List<?> parts) {
            parts.forEach(part -> collect(place.to(part), named));
        }
        if (place.schema().get("properties") instanceof Map<?, ?> properties) {
            properties.forEach((name, part) -> named.put(String.valueOf(name), place.to(part)));
        }
        if (place.schema().get("items") instanceof Map<?, ?> items) {
            named.put("items of the list", place.to(items));
        }
    }

    private static Map<String, Object> read(String file) {
        try {
            return JSON.std.mapFrom(Files.readString(FOLDER.resolve(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String address) {
        if (!address.startsWith(BASE)) {
            throw new IllegalArgumentException("no schema is fetched from elsewhere: " + address);
        }
        try {
            return Files.readString(FOLDER.resolve(address.substring(BASE.length())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> strings(@Nullable Object list) {
        return list instanceof List<?> words
                ? words.stream().map(String::valueOf).toList()
                : List.of();
    }
}
