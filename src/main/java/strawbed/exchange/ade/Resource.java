package strawbed.exchange.ade;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;

/**
 * One object of the standard.
 *
 * @param holds the events that are told by it, in a field or in its remark
 */
record Resource(AdeType type, Map<String, Object> fields, Set<EventId> holds) {
    Resource {
        holds = Set.copyOf(holds);
    }

    static Resource of(AdeType type, Fields fields, List<RecordedEvent> told) {
        return new Resource(
                type, fields.toMap(), told.stream().map(RecordedEvent::id).collect(Collectors.toSet()));
    }

    /** What every resource begins with; its times are those of the first and the last event that it tells. */
    static Fields begin(AdeType type, AdeSource source, String id, List<RecordedEvent> told) {
        List<RecordedEvent> sorted = told.stream()
                .sorted(Comparator.comparing(RecordedEvent::recordedAt))
                .toList();
        Fields meta = new Fields()
                .text("source", source.name())
                .text("sourceId", id)
                .text("modified", sorted.get(sorted.size() - 1).recordedAt().toString())
                .text("created", sorted.get(0).recordedAt().toString());
        return new Fields().text("resourceType", type.resourceType()).object("meta", meta);
    }
}
