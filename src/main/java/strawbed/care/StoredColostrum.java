package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumStored;
import strawbed.event.Term;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * Colostrum in stock: how long it keeps, how good it is, how much of it was fed. The limits are the farm's, of the
 * protocol in force when it was put in stock; sources with {@link Setting#REFRIGERATOR_HOURS} and
 * {@link Setting#FREEZER_DAYS}.
 *
 * @param stored when it was put in stock, and what was noted of it
 * @param keepsUntil the last acceptable time
 * @param fedLitres what calves took of it in measured feeds, in litres, exact
 * @param offeredLitres what was taken out for them, in litres, exact; what a calf left is no stock any more
 */
public record StoredColostrum(
        Timed<ColostrumStored> stored,
        Instant keepsUntil,
        BigDecimal fedLitres,
        BigDecimal offeredLitres,
        Protocol protocol) {
    /** How stored colostrum stands. */
    public enum State {
        KEEPS,
        /** Its time ends within 12 hours. */
        USE_SOON,
        PAST_ITS_TIME
    }

    private static final Duration SOON = Duration.ofHours(12);

    /**
     * All in stock now, what must be used first first; of a number used again the latest. What is used up is left out;
     * where more was fed than stored, what is left is not known, and it stays.
     */
    public static List<StoredColostrum> of(Herd herd, Instant now) {
        Farm farm = Farm.of(herd);
        List<StoredColostrum> stock = new ArrayList<>();
        for (Timed<ColostrumStored> stored : farm.stored()) {
            boolean isLatest = farm.storedAs(stored.event().batch(), now)
                    .filter(stored::equals)
                    .isPresent();
            if (isLatest) {
                StoredColostrum colostrum = of(stored, herd, farm);
                if (!colostrum.isUsedUp()) {
                    stock.add(colostrum);
                }
            }
        }
        stock.sort(Comparator.comparing(StoredColostrum::keepsUntil));
        return List.copyOf(stock);
    }

    private static StoredColostrum of(Timed<ColostrumStored> stored, Herd herd, Farm farm) {
        Protocol protocol = farm.protocolAt(stored.at());
        Duration keeps = protocol.time(isFrozen(stored) ? Setting.FREEZER_DAYS : Setting.REFRIGERATOR_HOURS);
        List<Feed> feeds = herd.calves().stream()
                .flatMap(calf -> calf.feeds().stream().filter(feed -> isFrom(feed, calf, stored, farm)))
                .toList();
        return new StoredColostrum(
                stored,
                stored.at().plus(keeps),
                feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add),
                feeds.stream().map(feed -> feed.volume().inLitres()).reduce(BigDecimal.ZERO, BigDecimal::add),
                protocol);
    }

    public boolean isFrozen() {
        return isFrozen(stored);
    }

    public State stateAt(Instant now) {
        if (now.isAfter(keepsUntil)) {
            return State.PAST_ITS_TIME;
        }
        return now.isAfter(keepsUntil.minus(SOON)) ? State.USE_SOON : State.KEEPS;
    }

    /** Its class by Brix; not judged where none was noted, or where it cannot be. */
    public Judged<ColostrumClass> grade() {
        BigDecimal brix = stored.event().brix();
        return brix == null
                ? Judged.not(WhyNot.NOT_TESTED)
                : new ColostrumQuality(new ColostrumQuality.Test.Brix(brix), true, protocol).grade();
    }

    public boolean isHeatTreated() {
        return stored.event().treatment() == Term.ColostrumTreatment.HEAT_TREATED;
    }

    /** What should be left of it, in litres, exact; not judged when more was fed from it than was stored. */
    public Judged<BigDecimal> leftLitres() {
        BigDecimal left = stored.event().volume().inLitres().subtract(offeredLitres);
        return left.signum() < 0 ? Judged.not(WhyNot.NOT_PLAUSIBLE) : Judged.of(left);
    }

    private boolean isUsedUp() {
        return leftLitres().value().filter(left -> left.signum() == 0).isPresent();
    }

    private static boolean isFrozen(Timed<ColostrumStored> stored) {
        return stored.event().treatment() == Term.ColostrumTreatment.FROZEN;
    }

    /** Whether a calf's feed came from this colostrum, by the source that counts for it. */
    private static boolean isFrom(Feed feed, CalfRecord calf, Timed<ColostrumStored> stored, Farm farm) {
        return FedColostrum.sourceOf(feed, calf)
                .map(Timed::event)
                .filter(source -> source.source() != Term.ColostrumSource.REPLACER)
                .map(ColostrumSourceNoted::batch)
                .flatMap(batch -> farm.storedAs(batch, feed.at()))
                .filter(stored::equals)
                .isPresent();
    }
}
