package strawbed.bench;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What is said in a recording.
 *
 * @param file the recording
 * @param words none where nothing of the grammar is said
 * @param tags the grammar's tags of it in their order, which then decide; empty where only words are given
 */
record Label(Path file, List<String> words, Optional<List<String>> tags) {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    Label {
        words = List.copyOf(words);
    }

    /**
     * Reads a CSV with the columns file (from the folder of the CSV), words, and tags if wanted, with semicolons between.
     *
     * @throws IllegalArgumentException if something is missing; says what and in which row
     */
    static List<Label> read(Path csv) {
        List<Label> labels = new ArrayList<>();
        try (Reader reader = Files.newBufferedReader(csv);
                var rows = FORMAT.parse(reader)) {
            List<String> columns = rows.getHeaderNames();
            if (!columns.contains("file") || !columns.contains("words")) {
                throw new IllegalArgumentException(
                        csv + " has the columns " + columns + ". Give the columns file and words, and tags if wanted.");
            }
            for (CSVRecord row : rows) {
                labels.add(of(row, csv, columns.contains("tags")));
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(csv + " cannot be read (" + e + "). Check the path.", e);
        }
        if (labels.isEmpty()) {
            throw new IllegalArgumentException(csv + " names no recording. Give one in each row.");
        }
        return labels;
    }

    private static Label of(CSVRecord row, Path csv, boolean tagged) {
        if (!row.isConsistent()) {
            throw new IllegalArgumentException(csv + ", row " + row.getRecordNumber() + " has " + row.size()
                    + " fields and not as many as the head. Mend it.");
        }
        Path file = csv.toAbsolutePath().resolveSibling(row.get("file"));
        if (!Files.isRegularFile(file)) {
            throw new IllegalArgumentException(csv + ", row " + row.getRecordNumber() + ": there is no file " + file
                    + ". Give its path from the folder of the CSV.");
        }
        return new Label(
                file,
                parts(row.get("words"), "\\s+"),
                tagged ? Optional.of(parts(row.get("tags"), ";")) : Optional.empty());
    }

    private static List<String> parts(String text, String between) {
        return Arrays.stream(text.split(between))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }
}
