package strawbed.calf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.event.Event.TwinNoted;

/** Which calves were born together, found without comparing each with each. Immutable, safe for any thread. */
final class Kinship {
    /** A calf and its place in the order of opening. */
    private record Placed(int place, CalfRecord calf) {}

    private final Map<String, List<Placed>> byDam = new HashMap<>();
    private final Map<String, List<Placed>> byNumber = new HashMap<>();
    private final Map<String, List<Placed>> byNamedTwin = new HashMap<>();

    /** @param calves in the order in which they were opened */
    Kinship(List<CalfRecord> calves) {
        for (int place = 0; place < calves.size(); place++) {
            CalfRecord calf = calves.get(place);
            Placed placed = new Placed(place, calf);
            put(byDam, calf.dam().stream(), placed);
            put(byNumber, calf.numbers().stream(), placed);
            put(byNamedTwin, namedTwin(calf).stream(), placed);
        }
    }

    /** See {@link Herd#twinsOf}. */
    List<CalfRecord> twinsOf(CalfRecord calf) {
        Stream<Placed> ofTheDam = found(byDam, calf.dam().stream())
                .filter(other -> apart(calf, other.calf()).compareTo(Herd.TWINS_WITHIN) <= 0);
        Stream<Placed> named = namedBy(calf).stream();
        Stream<Placed> naming = found(byNamedTwin, calf.numbers().stream())
                .filter(other -> namedBy(other.calf())
                        .filter(of -> isSame(of.calf(), calf))
                        .isPresent());
        return Stream.of(ofTheDam, named, naming)
                .flatMap(each -> each)
                .filter(other -> !isSame(other.calf(), calf))
                .sorted(Comparator.comparingInt(Placed::place))
                .map(Placed::calf)
                .distinct()
                .toList();
    }

    private Optional<Placed> namedBy(CalfRecord calf) {
        return found(byNumber, namedTwin(calf).stream())
                .filter(other -> !isSame(other.calf(), calf))
                .filter(other -> apart(calf, other.calf()).compareTo(Herd.NAMED_TWINS_WITHIN) <= 0)
                .min(Comparator.comparing(other -> apart(calf, other.calf())));
    }

    private static Optional<String> namedTwin(CalfRecord calf) {
        return calf.twin().map(TwinNoted::of);
    }

    private static Duration apart(CalfRecord calf, CalfRecord other) {
        return Duration.between(bornAbout(calf), bornAbout(other)).abs();
    }

    private static Instant bornAbout(CalfRecord calf) {
        return calf.bornAbout().orElse(Instant.EPOCH);
    }

    private static boolean isSame(CalfRecord one, CalfRecord other) {
        return one.id().equals(other.id());
    }

    private static void put(Map<String, List<Placed>> map, Stream<String> names, Placed placed) {
        names.map(Numbers::plain)
                .distinct()
                .forEach(name ->
                        map.computeIfAbsent(name, none -> new ArrayList<>(1)).add(placed));
    }

    private static Stream<Placed> found(Map<String, List<Placed>> map, Stream<String> names) {
        return names.map(Numbers::plain).distinct().flatMap(name -> map.getOrDefault(name, List.of()).stream());
    }
}
