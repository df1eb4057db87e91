package strawbed.exchange;

import static java.util.Map.entry;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Withdrawals;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventCodec;
import strawbed.journal.EventSource;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;

/**
 * The record as a table with a row for each event, also for one that no longer counts. Amounts stand as they were said,
 * with their unit, and beside that in litres, kilograms and degrees Celsius.
 */
public final class EventSheet {
    static final List<String> COLUMNS = List.of(
            "sequence",
            "id",
            "recorded_at_utc",
            "occurred_at_utc",
            "occurred_local",
            "zone",
            "calf_id",
            "calf_number",
            "type",
            "withdrawn",
            "volume_amount",
            "volume_unit",
            "volume_litres",
            "weight_amount",
            "weight_unit",
            "weight_kg",
            "temperature_amount",
            "temperature_unit",
            "temperature_celsius",
            "number",
            "dam",
            "parity",
            "breed",
            "twin_of",
            "born_together",
            "sex",
            "tag_number",
            "tag_scheme",
            "at_utc",
            "earliest_utc",
            "latest_utc",
            "ease",
            "ease_score_1_to_5",
            "presentation",
            "death_time",
            "breathing",
            "means",
            "licked",
            "milestone",
            "sign",
            "place",
            "finding",
            "navel_agent",
            "navel_agent_percent",
            "count_per_minute",
            "method",
            "serum_kind",
            "serum_protein_g_per_dl",
            "serum_brix_percent",
            "serum_igg_g_per_l",
            "drawn_at_utc",
            "brix_percent",
            "hydrometer_mg_per_ml",
            "colostrum_source",
            "cow",
            "batch",
            "treatment",
            "humidity_percent",
            "settings",
            "print_number",
            "printout",
            "printed_size",
            "event_withdrawn",
            "operator_chosen",
            "sounds_removed",
            "sounds_removed_bytes",
            "clock_expected_utc",
            "clock_found_utc",
            "zone_from",
            "zone_to",
            "event_sound",
            "source",
            "words",
            "verdict",
            "grammar",
            "model",
            "sound",
            "operator");

    /** The column of a stored field whose name is not its column, with the type in front where types differ. */
    private static final Map<String, String> COLUMN = Map.ofEntries(
            entry("TwinNoted.of", "twin_of"),
            entry("TwinNoted.count", "born_together"),
            entry("EarTagFitted.number", "tag_number"),
            entry("EarTagFitted.scheme", "tag_scheme"),
            entry("at", "at_utc"),
            entry("earliest", "earliest_utc"),
            entry("latest", "latest_utc"),
            entry("score", "ease_score_1_to_5"),
            entry("CalfDied.when", "death_time"),
            entry("agent", "navel_agent"),
            entry("percent", "navel_agent_percent"),
            entry("per_minute", "count_per_minute"),
            entry("TemperatureTaken.value", "temperature_amount"),
            entry("TemperatureTaken.unit", "temperature_unit"),
            entry("BarnClimateNoted.temperature", "temperature_amount"),
            entry("BarnClimateNoted.unit", "temperature_unit"),
            entry("ColostrumTested.temperature", "temperature_amount"),
            entry("ColostrumTested.unit", "temperature_unit"),
            entry("ColostrumFed.temperature", "temperature_amount"),
            entry("ColostrumFed.value", "volume_amount"),
            entry("ColostrumFed.unit", "volume_unit"),
            entry("ColostrumLeft.value", "volume_amount"),
            entry("ColostrumLeft.unit", "volume_unit"),
            entry("ColostrumStored.value", "volume_amount"),
            entry("ColostrumStored.unit", "volume_unit"),
            entry("CalfWeighed.value", "weight_amount"),
            entry("CalfWeighed.unit", "weight_unit"),
            entry("SerumTested.kind", "serum_kind"),
            entry("TreatmentNoted.kind", "treatment"),
            entry("drawn_at", "drawn_at_utc"),
            entry("hydrometer", "hydrometer_mg_per_ml"),
            entry("brix", "brix_percent"),
            entry("ColostrumSourceNoted.source", "colostrum_source"),
            entry("humidity", "humidity_percent"),
            entry("CardPrinted.number", "print_number"),
            entry("size", "printed_size"),
            entry("event", "event_withdrawn"),
            entry("operator", "operator_chosen"),
            entry("SoundsRemoved.count", "sounds_removed"),
            entry("bytes", "sounds_removed_bytes"),
            entry("expected", "clock_expected_utc"),
            entry("found", "clock_found_utc"),
            entry("from", "zone_from"),
            entry("to", "zone_to"),
            entry("sound", "event_sound"));

    private final EventCodec codec = new EventCodec();
    private final Withdrawals withdrawals;
    private final Map<CalfId, String> numbers = new HashMap<>();

    /** Goes through the record twice; what it keeps are withdrawals, and of each calf what it was ever called. */
    private EventSheet(EventSource events) {
        List<RecordedEvent> withdrawing = new ArrayList<>();
        events.forEach(event -> {
            if (event.event() instanceof Event.EventWithdrawn) {
                withdrawing.add(event);
            }
        });
        this.withdrawals = Withdrawals.of(withdrawing);
        Map<CalfId, List<CalfRecord.Entry>> naming = new HashMap<>();
        events.forEach(event -> {
            CalfId calf = event.calf();
            if (calf != null && namesCalf(event.event())) {
                naming.computeIfAbsent(calf, id -> new ArrayList<>(2))
                        .add(new CalfRecord.Entry(event, withdrawals.reach(event)));
            }
        });
        naming.forEach(
                (id, history) -> new CalfRecord(id, history).number().ifPresent(number -> numbers.put(id, number)));
    }

    /** Writes the table of a whole record. Goes through it three times, and never has it all in memory. */
    public static void write(EventSource events, Appendable out) throws IOException {
        EventSheet rows = new EventSheet(events);
        Sheet sheet = new Sheet(COLUMNS, out);
        Passing.each(events, event -> sheet.write(rows.filled(sheet.row(), event)));
    }

    private static boolean namesCalf(Event event) {
        return event instanceof Event.CalfOpened
                || event instanceof Event.CalfNumbered
                || event instanceof Event.EarTagFitted;
    }

    private Sheet.Row filled(Sheet.Row row, RecordedEvent recorded) {
        Event event = recorded.event();
        CalfId calf = recorded.calf();
        row.number("sequence", BigDecimal.valueOf(recorded.sequence()))
                .text("id", recorded.id().toString())
                .text("recorded_at_utc", recorded.recordedAt().toString())
                .text("occurred_at_utc", recorded.occurredAt().toString())
                .text("occurred_local", Sheet.local(recorded.occurredAt(), recorded.zone()))
                .text("zone", recorded.zone().getId())
                .text("calf_id", calf == null ? null : calf.toString())
                .text("calf_number", number(calf))
                .text("type", event.type())
                .text("withdrawn", yesOrNo(isWithdrawn(recorded)));
        codec.fields(event).forEach((field, value) -> put(row, column(event, field), value));
        converted(row, event);
        Provenance how = recorded.provenance();
        return row.text("source", how.source().word())
                .text("words", how.words().isEmpty() ? null : String.join(" ", how.words()))
                .text("verdict", how.verdict())
                .text("grammar", how.grammar())
                .text("model", how.model())
                .text("sound", how.sound())
                .text("operator", how.operator());
    }

    private @Nullable String number(@Nullable CalfId calf) {
        return calf == null ? null : numbers.get(calf);
    }

    /** A withdrawal of no single calf is never called withdrawn: only facts are. */
    private boolean isWithdrawn(RecordedEvent recorded) {
        boolean isBarnWithdrawal = recorded.calf() == null && recorded.event() instanceof Event.EventWithdrawn;
        return !isBarnWithdrawal && withdrawals.reach(recorded);
    }

    private static String column(Event event, String field) {
        if (event instanceof Event.SerumTested tested && field.equals("value")) {
            return switch (tested.kind()) {
                case PROTEIN -> "serum_protein_g_per_dl";
                case BRIX -> "serum_brix_percent";
                case IGG -> "serum_igg_g_per_l";
            };
        }
        if (event instanceof Event.NavelChecked && field.equals("finding")) {
            return "finding";
        }
        String ofType = COLUMN.get(event.type() + "." + field);
        return ofType == null ? COLUMN.getOrDefault(field, field) : ofType;
    }

    private static void put(Sheet.Row row, String column, Object value) {
        if (value instanceof BigDecimal number) {
            row.number(column, number);
        } else if (value instanceof Integer number) {
            row.number(column, number);
        } else if (value instanceof Long number) {
            row.number(column, number.longValue());
        } else if (value instanceof Boolean truth) {
            row.text(column, yesOrNo(truth));
        } else if (value instanceof Map<?, ?> settings) {
            row.text(
                    column,
                    settings.entrySet().stream()
                            .map(setting -> setting.getKey() + "=" + setting.getValue())
                            .collect(Collectors.joining("; ")));
        } else {
            row.text(column, value.toString());
        }
    }

    private static void converted(Sheet.Row row, Event event) {
        Volume volume = volume(event);
        Temperature temperature = temperature(event);
        row.number("volume_litres", volume == null ? null : volume.inLitres())
                .number("weight_kg", event instanceof Event.CalfWeighed weighed ? kilograms(weighed.weight()) : null)
                .number("temperature_celsius", temperature == null ? null : temperature.inCelsius());
    }

    private static BigDecimal kilograms(Mass mass) {
        return mass.inKilograms();
    }

    private static @Nullable Volume volume(Event event) {
        if (event instanceof Event.ColostrumFed fed) {
            return fed.volume();
        }
        if (event instanceof Event.ColostrumLeft left) {
            return left.volume();
        }
        return event instanceof Event.ColostrumStored stored ? stored.volume() : null;
    }

    private static @Nullable Temperature temperature(Event event) {
        if (event instanceof Event.TemperatureTaken taken) {
            return taken.temperature();
        }
        if (event instanceof Event.BarnClimateNoted noted) {
            return noted.temperature();
        }
        if (event instanceof Event.ColostrumTestedByHydrometer tested) {
            return tested.milk();
        }
        return event instanceof Event.ColostrumFed fed ? fed.warmedTo() : null;
    }

    private static String yesOrNo(boolean truth) {
        return truth ? "yes" : "no";
    }
}
