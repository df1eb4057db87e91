package strawbed.exchange.ade;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;

/**
 * A record as a document of the ICAR Animal Data Exchange standard, and what of the record is not in it.
 *
 * <p>The document is one collection of the standard, on one line: {@code view.totalItems}, and in {@code member} the
 * resources by type and then in the order of the record, each with its {@code resourceType}. Weights are in the unit
 * that was said, times are UTC. Each event is either told by a resource or listed with a reason, never both. Immutable
 * and safe for any thread.
 *
 * <p>Source: the JSON schemas of the ICAR Animal Data Exchange working group.
 */
public final class AdeExport {
    private static final JSON TEXT = JSON.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                    .build())
            .build();

    private final List<Resource> resources;
    private final List<NotExported> notExported;

    private AdeExport(List<Resource> resources, List<NotExported> notExported) {
        this.resources = List.copyOf(resources);
        this.notExported = List.copyOf(notExported);
    }

    /** The document as JSON. */
    public static String json(Herd herd, AdeSource source) {
        return of(herd, source).json();
    }

    public static AdeExport of(Herd herd, AdeSource source) {
        Map<CalfId, CalfFacts> calves = new LinkedHashMap<>();
        herd.calves().forEach(calf -> calves.put(calf.id(), new CalfFacts(calf)));
        List<Resource> resources = resources(herd, calves.values(), source);
        Set<EventId> exported = new HashSet<>();
        resources.forEach(resource -> exported.addAll(resource.holds()));
        return new AdeExport(resources, notExported(herd, calves, exported));
    }

    /** The document as JSON: a collection of resources of every type. */
    public String json() {
        return collection(resources);
    }

    /** A collection of the resources of one type, as the standard's own collections are. */
    public String json(AdeType type) {
        return collection(
                resources.stream().filter(resource -> resource.type() == type).toList());
    }

    /** The events that the document tells. */
    public Set<EventId> exported() {
        Set<EventId> exported = new TreeSet<>(Comparator.comparing(EventId::value));
        resources.forEach(resource -> exported.addAll(resource.holds()));
        return exported;
    }

    /** The events that the document does not tell, in the order of the record. */
    public List<NotExported> notExported() {
        return notExported;
    }

    private static List<Resource> resources(Herd herd, Collection<CalfFacts> calves, AdeSource source) {
        Identifiers identifiers = new Identifiers(source);
        Animals animals = new Animals(source, identifiers);
        CalfEvents events = new CalfEvents(source, identifiers);
        List<Resource> resources = new ArrayList<>();
        calves.forEach(calf -> resources.add(animals.resource(calf)));
        resources.addAll(new Parturitions(source, identifiers, animals).resources(herd, List.copyOf(calves)));
        calves.forEach(calf -> resources.addAll(events.resources(calf)));
        resources.sort(Comparator.comparing(Resource::type));
        return resources;
    }

    private static List<NotExported> notExported(Herd herd, Map<CalfId, CalfFacts> calves, Set<EventId> exported) {
        Map<CalfId, Set<EventId>> lastTold = new HashMap<>();
        calves.forEach((id, calf) -> lastTold.put(id, calf.lastTold()));
        List<NotExported> notExported = new ArrayList<>();
        for (CalfRecord.Entry entry : herd.history()) {
            RecordedEvent recorded = entry.recorded();
            if (!exported.contains(recorded.id())) {
                CalfFacts calf = recorded.calf() == null ? null : calves.get(recorded.calf());
                notExported.add(new NotExported(recorded, why(entry, calf, lastTold)));
            }
        }
        return notExported;
    }

    private static WhyNotExported why(
            CalfRecord.Entry entry, @Nullable CalfFacts calf, Map<CalfId, Set<EventId>> lastTold) {
        RecordedEvent recorded = entry.recorded();
        if (entry.withdrawn()) {
            return WhyNotExported.WITHDRAWN;
        }
        if (recorded.event() instanceof EventWithdrawn) {
            return WhyNotExported.ABOUT_THE_RECORD;
        }
        if (recorded.calf() == null) {
            return WhyNotExported.NO_ANIMAL;
        }
        if (calf == null) {
            return WhyNotExported.CALF_NOT_OPENED;
        }
        boolean last = lastTold.getOrDefault(calf.id(), Set.of()).contains(recorded.id());
        return recorded.event().match(new Reasons(calf.dam().isPresent(), last));
    }

    private static String collection(List<Resource> members) {
        Map<String, Object> collection = new LinkedHashMap<>();
        collection.put("view", Map.of("totalItems", members.size()));
        collection.put("member", members.stream().map(Resource::fields).toList());
        try {
            return TEXT.asString(collection);
        } catch (IOException e) {
            throw new UncheckedIOException("the export has no JSON", e);
        }
    }
}
