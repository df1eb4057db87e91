package strawbed.care;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BarnClimateNoted;
import strawbed.event.Event.ColostrumStored;
import strawbed.event.RecordedEvent;
import strawbed.protocol.Protocol;
import strawbed.protocol.Protocols;
import strawbed.protocol.Setting;

/** What holds for all calves of a record: the farm's protocols, the barn's air and the colostrum in stock. */
public final class Farm {
    private final Protocols protocols;
    private final NavigableMap<Instant, Timed<BarnClimateNoted>> air = new TreeMap<>();
    private final List<Timed<ColostrumStored>> stored;

    /** By batch number; of two at once the last told. Years of numbers used again are else gone through each time. */
    private final Map<String, NavigableMap<Instant, Timed<ColostrumStored>>> batches = new HashMap<>();

    private Farm(List<RecordedEvent> barn) {
        this.protocols = Protocols.of(barn);
        of(barn, BarnClimateNoted.class).forEach(reading -> air.put(reading.at(), reading));
        this.stored = of(barn, ColostrumStored.class);
        stored.forEach(kept -> batches.computeIfAbsent(kept.event().batch(), batch -> new TreeMap<>())
                .put(kept.at(), kept));
    }

    public static Farm of(Herd herd) {
        return new Farm(herd.barn());
    }

    /** The protocol in force at the calf's birth: by it the calf is cared for and judged. */
    public Protocol protocolFor(CalfRecord calf) {
        return calf.bornAbout().map(protocols::at).orElseGet(protocols::latest);
    }

    /** The protocol in force at this time. */
    public Protocol protocolAt(Instant time) {
        return protocols.at(time);
    }

    /** The protocol that calves born now are cared for by. */
    public Protocol protocol() {
        return protocols.latest();
    }

    /** The barn's air at this time: the latest reading before it, of two at once the last told, if it still holds. */
    public Optional<Timed<BarnClimateNoted>> airAt(Instant time) {
        Instant oldest = time.minus(protocols.at(time).time(Setting.BARN_READING_HOURS));
        return Optional.ofNullable(air.floorEntry(time))
                .map(Map.Entry::getValue)
                .filter(latest -> !latest.at().isBefore(oldest));
    }

    /** What was put in stock under this number last before this time. */
    public Optional<Timed<ColostrumStored>> storedAs(String batch, Instant time) {
        return Optional.ofNullable(batches.get(batch))
                .map(kept -> kept.floorEntry(time))
                .map(Map.Entry::getValue);
    }

    /** All colostrum that was put in stock, in the order of the record. */
    public List<Timed<ColostrumStored>> stored() {
        return stored;
    }

    private static <E extends Event> List<Timed<E>> of(List<RecordedEvent> barn, Class<E> kind) {
        List<Timed<E>> found = new ArrayList<>();
        for (RecordedEvent recorded : barn) {
            if (kind.isInstance(recorded.event())) {
                found.add(new Timed<>(recorded.occurredAt(), recorded.id(), kind.cast(recorded.event())));
            }
        }
        return List.copyOf(found);
    }
}
