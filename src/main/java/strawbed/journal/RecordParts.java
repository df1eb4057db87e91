package strawbed.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strawbed.event.CalfId;
import strawbed.event.RecordedEvent;

/**
 * Parts of a record, so that a question about a few calves need not read ten years.
 *
 * <p>A part holds every fact of the calves it is about, and every withdrawal of one of its facts, of whatever calf the
 * withdrawal is; so that what counts in a part counts in the whole record, and the other way round. Searches may find a
 * calf too many, such as one that bore a number once, and never one too few. They look at what is written and not at
 * what still counts. Days are those of UTC: a fact that was recorded on the day of a limit is always in.
 */
public interface RecordParts {
    /** Calves in a portion: enough that asking costs little, few enough for a small memory. */
    int PORTION = 500;

    /** By what a fact can name a calf, its dam, another calf or colostrum. */
    enum Naming {
        /** Its own number: when it was opened, when it was numbered, on a tag. White space and zeros do not matter. */
        NUMBER,
        /** The cow that bore it. White space and zeros do not matter. */
        DAM,
        /** The number of another one that was born with it. White space and zeros do not matter. */
        TWIN,
        /** The batch of colostrum that it was fed from, letter for letter. */
        BATCH
    }

    /** All facts as they are now; what is saved later is not in it. */
    EventSource asItIs();

    /** The sequence of the newest fact, 0 where there is none. */
    long last();

    /** The calves that were opened, in the order of the record, also those whose opening was withdrawn. */
    List<CalfId> calves();

    /** The same in portions of a few hundred, so that all calves can be gone through without holding them all. */
    default List<List<CalfId>> calvesInPortions() {
        List<CalfId> all = calves();
        List<List<CalfId>> portions = new ArrayList<>();
        for (int from = 0; from < all.size(); from += PORTION) {
            portions.add(all.subList(from, Math.min(all.size(), from + PORTION)));
        }
        return List.copyOf(portions);
    }

    /** The calves of which any fact but a print was recorded from the one day to the other: a print is no care. */
    Set<CalfId> calvesRecorded(Instant from, Instant until);

    /**
     * The calves that a fact names so.
     *
     * @param since the names, each with the day from which on any fact of the calf must have been recorded
     */
    Set<CalfId> calvesNaming(Naming how, Map<String, Instant> since);

    /** All facts of these calves and what withdraws them, in the order of the record. */
    List<RecordedEvent> ofCalves(Collection<CalfId> calves);

    /**
     * All facts from the first one on that was recorded on this day or later, all earlier ones of the calves that these are
     * about, and what withdraws them; in the order of the record. Where most of a time's calves are wanted, this is faster
     * than to ask for each.
     */
    List<RecordedEvent> since(Instant day);

    /**
     * The facts of no single calf from this day on, what holds until another follows it (each adopted protocol, the newest
     * operator), and what withdraws them, but no other withdrawals; in the order of the record.
     */
    List<RecordedEvent> ofBarn(Instant from);

    /** The adopted protocols and what withdraws them, in the order of the record. */
    List<RecordedEvent> protocols();

    /** The barn's air as noted from the one day to the other, and what withdraws it, in the order of the record. */
    List<RecordedEvent> air(Instant from, Instant until);

    /** All that was stored under these batch numbers, and what withdraws it, in the order of the record. */
    List<RecordedEvent> stored(Collection<String> batches);
}
