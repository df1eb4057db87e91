package strawbed.exchange.ade;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Numbers;
import strawbed.event.CalfId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.Term.DeathTime;

/**
 * Births as events of the dam, twins in one. A birth without a known dam is none.
 *
 * <p>The time of the event is only given where the birth of each calf is known to the moment; a window stands in the
 * remark. So does all else that the standard has no field for, and what twins have not in common.
 */
final class Parturitions {
    private final AdeSource source;
    private final Identifiers identifiers;
    private final Animals animals;

    Parturitions(AdeSource source, Identifiers identifiers, Animals animals) {
        this.source = source;
        this.identifiers = identifiers;
        this.animals = animals;
    }

    List<Resource> resources(Herd herd, List<CalfFacts> calves) {
        Map<String, Map<CalfId, CalfFacts>> byDam = new LinkedHashMap<>();
        for (CalfFacts calf : calves) {
            calf.dam()
                    .ifPresent(dam -> byDam.computeIfAbsent(Numbers.plain(dam.value()), number -> new LinkedHashMap<>())
                            .put(calf.id(), calf));
        }
        List<Resource> resources = new ArrayList<>();
        byDam.forEach((dam, ofDam) -> {
            while (!ofDam.isEmpty()) {
                resources.add(resource(dam, takeTwins(herd, ofDam)));
            }
        });
        return resources;
    }

    /** Takes the first calf out, and all that were born with it. */
    private static List<CalfFacts> takeTwins(Herd herd, Map<CalfId, CalfFacts> ofDam) {
        Set<CalfId> together = new LinkedHashSet<>();
        List<CalfFacts> open = new ArrayList<>(List.of(ofDam.values().iterator().next()));
        while (!open.isEmpty()) {
            CalfFacts calf = open.remove(open.size() - 1);
            if (together.add(calf.id()) && ofDam.size() > together.size()) {
                herd.twinsOf(calf.record()).stream()
                        .map(CalfRecord::id)
                        .filter(ofDam::containsKey)
                        .forEach(twin -> open.add(ofDam.get(twin)));
            }
        }
        List<CalfFacts> twins = ofDam.values().stream()
                .filter(calf -> together.contains(calf.id()))
                .toList();
        together.forEach(ofDam::remove);
        return twins;
    }

    private Resource resource(String dam, List<CalfFacts> calves) {
        List<RecordedEvent> told =
                calves.stream().flatMap(Parturitions::told).distinct().toList();
        Optional<Integer> parity = agreed(calves, CalfFacts::parity);
        Optional<Integer> total = agreed(
                        calves,
                        calf -> calf.twin()
                                .map(twin -> new CalfFacts.Told<>(twin.value().count(), twin.by())))
                .filter(count -> count >= calves.size());
        Optional<Term.CalvingEase> ease = agreed(calves, CalfFacts::ease)
                .filter(word -> calves.stream().allMatch(calf -> calf.ease().isPresent()));
        Optional<Instant> at = at(calves);
        Remarks remarks = new Remarks(at.isEmpty(), parity.isEmpty(), total.isEmpty(), ease.isEmpty());

        String id = calves.get(0).openings().get(0).id().toString();
        Fields fields = Resource.begin(AdeType.PARTURITION, source, id, told)
                .text("id", id)
                .time("eventDateTime", at)
                .text("remark", remarks.of(calves))
                .object("animal", identifiers.cow(dam))
                .count("damParity", parity)
                .count("totalProgeny", total)
                .text("calvingEase", ease.map(Term::word))
                .list("progenyDetails", calves.stream().map(this::progeny).toList());
        return Resource.of(AdeType.PARTURITION, fields, told);
    }

    private Fields progeny(CalfFacts calf) {
        return animals.identity(calf, new Fields().text("resourceType", "icarProgenyDetailsResource"))
                .time(
                        "taggingDate",
                        Identifiers.officialTag(calf).map(tag -> tag.by().occurredAt()))
                .text(
                        "birthStatus",
                        calf.death()
                                .filter(death -> death.value().when() == DeathTime.AT_BIRTH)
                                .map(death -> AdeWords.STILLBORN));
    }

    /** When the first was born, where that is known of each. */
    private static Optional<Instant> at(List<CalfFacts> calves) {
        List<Instant> known =
                calves.stream().flatMap(calf -> calf.bornAt().stream()).sorted().toList();
        return known.size() == calves.size() ? Optional.of(known.get(0)) : Optional.empty();
    }

    /** What all calves say of whom it was said. */
    private static <T extends Comparable<T>> Optional<T> agreed(
            List<CalfFacts> calves, Function<CalfFacts, Optional<CalfFacts.Told<T>>> fact) {
        TreeSet<T> values = calves.stream()
                .flatMap(calf -> fact.apply(calf).stream())
                .map(CalfFacts.Told::value)
                .collect(Collectors.toCollection(TreeSet::new));
        return values.size() == 1 ? Optional.of(values.first()) : Optional.empty();
    }

    private static Stream<RecordedEvent> told(CalfFacts calf) {
        return Stream.<Optional<? extends CalfFacts.Told<?>>>of(
                        calf.dam(),
                        calf.parity(),
                        calf.twin(),
                        calf.born(),
                        calf.found(),
                        calf.ease(),
                        calf.easeScore(),
                        calf.presentation())
                .flatMap(Optional::stream)
                .map(CalfFacts.Told::by);
    }
}
