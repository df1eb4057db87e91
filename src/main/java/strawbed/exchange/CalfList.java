package strawbed.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.exchange.ColumnMap.Field;

/** Reads calves from somebody's CSV (RFC 4180, UTF-8, commas, with a heading), and finds all that is wrong in it. */
public final class CalfList {
    private static final int LONGEST_NAME = 60;
    private static final Map<String, Term.Sex> SEXES =
            Map.of("female", Term.Sex.FEMALE, "heifer", Term.Sex.FEMALE, "male", Term.Sex.MALE, "bull", Term.Sex.MALE);

    private final ColumnMap map;
    private final BirthCell births;
    private final Faults faults = new Faults();
    private final List<CalfRow> rows = new ArrayList<>();
    private final Map<Integer, Long> lineOf = new HashMap<>();

    private CalfList(ColumnMap map, BirthCell births) {
        this.map = map;
        this.births = births;
    }

    /**
     * The calves of the file in their order, or all that is wrong with it. Beyond the calves never more than a row is in
     * memory.
     *
     * @param zone the farm's, for times without one
     * @param now no calf is born later
     * @throws ExchangeException if the file cannot be read
     */
    public static Reading<List<CalfRow>> read(Path file, ColumnMap map, ZoneId zone, Instant now) {
        CalfList list = new CalfList(map, new BirthCell(zone, now));
        try (InputStream in = RecordReader.open(file)) {
            list.read(in);
        } catch (IOException failure) {
            throw ExchangeException.unreadable(file, failure);
        }
        return list.faults.or(List.copyOf(list.rows));
    }

    /** The same calves, unless one of them seems to be in the record already. */
    public static Reading<List<CalfRow>> against(List<CalfRow> rows, Herd herd) {
        Faults faults = new Faults();
        for (CalfRow row : rows) {
            String number = row.number();
            String dam = row.dam();
            if (number != null && herd.byNumber(number).isPresent()) {
                faults.add(row.line(), "a calf " + number + " is open in the record already.");
            } else if (number == null
                    && dam != null
                    && herd.byDam(dam).stream().map(CalfRecord::number).anyMatch(Optional::isEmpty)) {
                faults.add(row.line(), "a calf of cow " + dam + " without a number is open in the record already.");
            }
        }
        return faults.or(rows);
    }

    /**
     * What the record is told of these calves: each is opened now, and the rest happened when it was born.
     *
     * @param ids gives each calf its id
     */
    public static List<NewEvent> events(List<CalfRow> rows, Supplier<UUID> ids, Instant now) {
        List<NewEvent> events = new ArrayList<>();
        Provenance how = Provenance.of(Provenance.Source.IMPORT);
        for (CalfRow row : rows) {
            CalfId calf = new CalfId(ids.get());
            events.add(new NewEvent(calf, new Event.CalfOpened(row.number(), row.dam()), now, how));
            if (row.born() != null) {
                events.add(new NewEvent(
                        calf, new Event.CalfBorn(row.born()), row.born().midpoint(), how));
            }
            if (row.sex() != null) {
                events.add(new NewEvent(calf, new Event.SexNoted(row.sex()), now, how));
            }
            if (row.breed() != null) {
                events.add(new NewEvent(calf, new Event.BreedNoted(row.breed()), now, how));
            }
        }
        return List.copyOf(events);
    }

    private void read(InputStream in) throws IOException {
        RowLimit limit = new RowLimit(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
        try (CSVParser parser = CSVParser.parse(limit, CSVFormat.RFC4180)) {
            try {
                read(parser, limit);
            } catch (UncheckedIOException e) {
                Throwable cause = e.getCause() == null ? e : e.getCause();
                String why = cause instanceof CharacterCodingException
                        ? "the file is not UTF-8 text. Save it as CSV in UTF-8"
                        : String.valueOf(cause.getMessage());
                faults.add(parser.getCurrentLineNumber() + 1, why + ". Nothing behind this was read.");
            }
        }
    }

    private void read(CSVParser parser, RowLimit limit) {
        Iterator<CSVRecord> records = parser.iterator();
        if (!records.hasNext()) {
            faults.add(1, "the file is empty.");
            return;
        }
        CSVRecord heading = records.next();
        Map<Field, Integer> places = places(heading);
        if (places.isEmpty()) {
            return;
        }
        long line = parser.getCurrentLineNumber() + 1;
        while (records.hasNext()) {
            limit.next();
            CSVRecord record = records.next();
            if (record.size() == 1 && record.get(0).isBlank()) {
                // An empty line, as many programs leave at the end.
            } else if (record.size() != heading.size()) {
                faults.add(line, "the row has " + record.size() + " cells, and the heading " + heading.size() + ".");
            } else {
                take(line, record, places);
            }
            line = parser.getCurrentLineNumber() + 1;
        }
    }

    /** Where each fact stands; empty when a column is missing or there twice. */
    private Map<Field, Integer> places(CSVRecord heading) {
        List<String> names = new ArrayList<>();
        heading.forEach(name -> names.add((names.isEmpty() ? name.replace("\uFEFF", "") : name).strip()));
        Map<Field, Integer> places = new HashMap<>();
        for (Field field : Field.values()) {
            String wanted = map.heading(field).orElse(null);
            if (wanted == null) {
                continue;
            }
            long found = names.stream().filter(wanted::equals).count();
            if (found != 1) {
                faults.add(
                        1,
                        "there " + (found == 0 ? "is no column " : "are several columns ") + "\"" + wanted + "\" for "
                                + field.word() + ". The heading has " + names + ", separated by commas.");
                return Map.of();
            }
            places.put(field, names.indexOf(wanted));
        }
        return places;
    }

    private void take(long line, CSVRecord record, Map<Field, Integer> places) {
        try {
            String sex = cell(record, places, Field.SEX);
            String born = cell(record, places, Field.BORN);
            CalfRow row = new CalfRow(
                    line,
                    number(line, cell(record, places, Field.NUMBER)),
                    name("dam", cell(record, places, Field.DAM)),
                    born == null ? null : births.read(born),
                    sex == null ? null : sex(sex),
                    name("breed", cell(record, places, Field.BREED)));
            if (row.number() == null && row.dam() == null) {
                throw new IllegalArgumentException("the row has neither a number nor a dam.");
            }
            rows.add(row);
        } catch (IllegalArgumentException e) {
            faults.add(line, String.valueOf(e.getMessage()));
        }
    }

    private static @Nullable String cell(CSVRecord record, Map<Field, Integer> places, Field field) {
        Integer place = places.get(field);
        String text = place == null ? "" : record.get(place).strip();
        return text.isEmpty() ? null : text;
    }

    private @Nullable String number(long line, @Nullable String text) {
        if (text == null) {
            return null;
        }
        if (!text.matches("[0-9]{1,4}")) {
            throw new IllegalArgumentException("\"" + text + "\" is no number that a calf can be called by. It has 1 to"
                    + " 4 digits and nothing else.");
        }
        Long earlier = lineOf.putIfAbsent(Integer.valueOf(text), line);
        if (earlier != null) {
            throw new IllegalArgumentException("the number " + text + " stands in line " + earlier + " already.");
        }
        return text;
    }

    private static @Nullable String name(String what, @Nullable String text) {
        if (text != null && (text.length() > LONGEST_NAME || !text.equals(CellText.withoutControls(text)))) {
            throw new IllegalArgumentException("the " + what + " \"" + text + "\" is longer than " + LONGEST_NAME
                    + " characters, or has characters that cannot be seen.");
        }
        return text;
    }

    private static Term.Sex sex(String text) {
        Term.Sex sex = SEXES.get(text.toLowerCase(Locale.ROOT));
        if (sex == null) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no sex. Write female, heifer, male or bull, or leave it empty.");
        }
        return sex;
    }
}
