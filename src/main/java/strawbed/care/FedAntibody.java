package strawbed.care;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strawbed.calf.Feed;

/**
 * The antibody in one feed.
 *
 * @param grams g
 * @param least the least it may be, in g
 * @param most the most it may be, in g
 * @param isEstimate whether it is estimated from Brix
 * @param isAssumed whether the test may be of other colostrum
 */
record FedAntibody(
        Feed feed, BigDecimal grams, BigDecimal least, BigDecimal most, boolean isEstimate, boolean isAssumed) {
    /** That of every feed; not judged as soon as one is not. */
    static Judged<List<FedAntibody>> ofAll(List<FedColostrum> fed) {
        Judged<List<FedAntibody>> all = Judged.of(List.of());
        for (FedColostrum each : fed) {
            all = all.then(before -> each.antibody().then(next -> {
                List<FedAntibody> more = new ArrayList<>(before);
                more.add(next);
                return Judged.of(List.copyOf(more));
            }));
        }
        return all;
    }
}
