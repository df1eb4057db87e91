package strawbed.care;

import java.util.List;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event.TwinNoted;
import strawbed.event.Term;

/**
 * Whether a heifer shared the womb with a bull.
 *
 * <p>Sources: more than 9 in 10 heifers born twin to a bull are infertile, beef cattle extension and a Canadian
 * veterinary column; that one bull among several marks all heifers, and that a twin of unknown sex leaves it unknown,
 * is common practice, no published source.
 */
public enum Freemartin {
    /** No heifer, no twin, or all the others are known to be heifers. */
    NO,
    /** One of the others is a bull, also when it is dead. */
    LIKELY,
    /** One of the others is not recorded, or its sex is not: dead before anybody looked, or not said. */
    UNKNOWN;

    public static Freemartin of(CalfRecord calf, Herd herd) {
        if (calf.sex().filter(sex -> sex == Term.Sex.FEMALE).isEmpty()) {
            return NO;
        }
        List<CalfRecord> twins = herd.twinsOf(calf);
        if (twins.stream()
                .anyMatch(twin -> twin.sex().filter(sex -> sex == Term.Sex.MALE).isPresent())) {
            return LIKELY;
        }
        int others = Stream.concat(Stream.of(calf), twins.stream())
                        .flatMap(each -> each.twin().stream())
                        .mapToInt(TwinNoted::count)
                        .max()
                        .orElse(1)
                - 1;
        boolean allSexed = twins.stream().allMatch(twin -> twin.sex().isPresent());
        return allSexed && twins.size() >= others ? NO : UNKNOWN;
    }
}
