package strawbed.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;

/**
 * What bringing facts of another record into a record comes to. Nothing is written by making one.
 *
 * @param added the facts that are missing, with the sequence that they will have, in the order given
 * @param known how many are there already
 * @param conflicts the facts, as given, whose id a different fact has
 */
public record ImportPlan(List<RecordedEvent> added, int known, List<RecordedEvent> conflicts) {
    public ImportPlan {
        added = List.copyOf(added);
        conflicts = List.copyOf(conflicts);
    }

    /**
     * Works out what is missing.
     *
     * @param there all facts of the record that have the id of one of these, others or not
     * @param last the sequence of the record's last fact, 0 where there is none
     * @param imported what is to come into it, in the order of the other record
     */
    public static ImportPlan of(List<RecordedEvent> there, long last, List<RecordedEvent> imported) {
        Map<EventId, RecordedEvent> byId = new HashMap<>();
        there.forEach(event -> byId.put(event.id(), event));
        long sequence = last;
        List<RecordedEvent> added = new ArrayList<>();
        List<RecordedEvent> conflicts = new ArrayList<>();
        for (RecordedEvent event : imported) {
            RecordedEvent same = byId.get(event.id());
            if (same == null) {
                sequence++;
                RecordedEvent next = at(sequence, event);
                added.add(next);
                byId.put(next.id(), next);
            } else if (!at(same.sequence(), event).equals(same)) {
                conflicts.add(event);
            }
        }
        return new ImportPlan(added, imported.size() - added.size() - conflicts.size(), conflicts);
    }

    /**
     * This plan, if it can be carried out.
     *
     * @throws JournalException for {@link Reason#CONFLICT} otherwise
     */
    public ImportPlan orRefuse() {
        if (!conflicts.isEmpty()) {
            throw new JournalException(
                    Reason.CONFLICT,
                    "Nothing was imported: the record has another event with the id "
                            + conflicts.get(0).id() + ". Import into an empty data folder instead.",
                    null);
        }
        return this;
    }

    private static RecordedEvent at(long sequence, RecordedEvent event) {
        return new RecordedEvent(
                event.id(),
                sequence,
                event.recordedAt(),
                event.occurredAt(),
                event.zone(),
                event.calf(),
                event.event(),
                event.provenance());
    }
}
