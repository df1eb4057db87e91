package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the links that are left say of a row. Each link names the hash before its own, so a hash is known from two links:
 * a row is proven where any two neighbours fit it, even if its own link is lost or damaged. Owned by one thread.
 */
final class ChainProof {
    /** Letters hashed for rows whose number is damaged; more would take minutes in a file of which little is left. */
    private static final long MOST_TRIED = 100_000_000;

    /** About as many as are in the short fields of a row. */
    private static final int SHORT_FIELDS = 400;

    private final Map<Long, List<ChainLink>> links = new HashMap<>();
    private final Set<String> hashes = new HashSet<>();

    /** Hashes behind which a proven row stands; empty before a station's first. */
    private final Set<Optional<String>> followed = new HashSet<>();

    private final Set<String> named;
    private final Collection<ChainLink> all;
    private long tried;

    /** @param named the station by its own row; empty if that is lost */
    ChainProof(Collection<ChainLink> all, Set<String> named) {
        this.all = all;
        this.named = named;
        for (ChainLink link : all) {
            links.computeIfAbsent(link.number(), number -> new ArrayList<>()).add(link);
            hashes.add(link.hash());
            if (link.previous() != null) {
                hashes.add(link.previous());
            }
        }
    }

    /** What the chain says of a row. */
    enum Verdict {
        /** It is as it was saved. */
        PROVEN,
        /** No link is left that could tell. */
        UNPROVEN,
        /** There is a link, and it does not fit. */
        CHANGED
    }

    Verdict of(long number, EventRow row) {
        for (@Nullable String previous : previous(number)) {
            for (String station : stations(number)) {
                String hash = ChainHash.of(station, previous, row);
                if (hashes.contains(hash)) {
                    followed.add(Optional.ofNullable(previous));
                    return Verdict.PROVEN;
                }
            }
        }
        boolean isBetween = links.containsKey(number - 1) && links.containsKey(number + 1);
        return links.containsKey(number) || isBetween ? Verdict.CHANGED : Verdict.UNPROVEN;
    }

    /** The number of a row that no link at its own number proves; empty where no other does. Call it after the others. */
    OptionalLong numberOf(EventRow row) {
        for (ChainLink link : all) {
            if (follows(link.station(), link.previous(), row)) {
                return OptionalLong.of(link.number());
            }
            if (follows(link.station(), link.hash(), row)) {
                return OptionalLong.of(link.number() + 1);
            }
        }
        return OptionalLong.empty();
    }

    /** Whether the row is the one behind this hash; a hash that a proven row is behind has no other. */
    private boolean follows(String station, @Nullable String previous, EventRow row) {
        if (tried >= MOST_TRIED || followed.contains(Optional.ofNullable(previous))) {
            return false;
        }
        tried += SHORT_FIELDS
                + row.json().length()
                + (row.words() == null ? 0 : row.words().length());
        boolean isNext = hashes.contains(ChainHash.of(station, previous, row));
        if (isNext) {
            followed.add(Optional.ofNullable(previous));
        }
        return isNext;
    }

    /** The highest number that a link confirms; 0 if there is none. */
    long last() {
        return all.stream()
                .filter(ChainLink::numberStands)
                .mapToLong(ChainLink::number)
                .max()
                .orElse(0);
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    private List<ChainLink> at(long number) {
        return links.getOrDefault(number, List.of());
    }

    private Set<@Nullable String> previous(long number) {
        Set<@Nullable String> previous = new LinkedHashSet<>();
        at(number).forEach(link -> previous.add(link.previous()));
        at(number - 1).forEach(link -> previous.add(link.hash()));
        if (number == 1) {
            previous.add(null);
        }
        return previous;
    }

    private Set<String> stations(long number) {
        Set<String> stations = new LinkedHashSet<>();
        for (long near = number - 1; near <= number + 1; near++) {
            at(near).forEach(link -> stations.add(link.station()));
        }
        stations.addAll(named);
        return stations;
    }
}
