package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
 */
public record StoredColostrum(
        Timed<ColostrumStored> stored, Instant keepsUntil, BigDecimal fedLitres, Protocol protocol) {
    /** How stored colostrum stands. */
    public enum StockState {
        KEEPS,
        /** Its time ends within 12 hours. */
        USE_SOON,
        PAST_ITS_TIME
    }

    private static final Duration SOON = Duration.ofHours(12);

    /** All in stock, what must be used first first; of a number used again the latest. What is used up is left out. */
    public static List<StoredColostrum> of(Herd herd) {
        Farm farm = Farm.of(herd);
        List<StoredColostrum> stock = new ArrayList<>();
        for (Timed<ColostrumStored> stored : farm.stored()) {
            boolean isLatest = farm.storedAs(stored.event().batch(), Instant.MAX)
                    .filter(stored::equals)
                    .isPresent();
            StoredColostrum colostrum = of(stored, herd, farm);
            if (isLatest && colostrum.leftLitres().signum() > 0) {
                stock.add(colostrum);
            }
        }
        stock.sort(Comparator.comparing(StoredColostrum::keepsUntil));
        return List.copyOf(stock);
    }

    private static StoredColostrum of(Timed<ColostrumStored> stored, Herd herd, Farm farm) {
        Protocol protocol = farm.protocolAt(stored.at());
        Duration keeps = protocol.time(isFrozen(stored) ? Setting.FREEZER_DAYS : Setting.REFRIGERATOR_HOURS);
        BigDecimal fed =
                herd.calves().stream().map(calf -> fedOf(calf, stored, farm)).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new StoredColostrum(stored, stored.at().plus(keeps), fed, protocol);
    }

    public boolean isFrozen() {
        return isFrozen(stored);
    }

    public StockState stateAt(Instant now) {
        if (now.isAfter(keepsUntil)) {
            return StockState.PAST_ITS_TIME;
        }
        return now.isAfter(keepsUntil.minus(SOON)) ? StockState.USE_SOON : StockState.KEEPS;
    }

    /** Its class by Brix; not judged where none was noted, or where it cannot be. */
    public Judged<ColostrumClass> grade() {
        BigDecimal brix = stored.event().brix();
        return brix == null
                ? Judged.not(WhyNot.NOT_TESTED)
                : new ColostrumQuality(new ColostrumQuality.Test.Brix(brix), true, protocol).grade();
    }

    /** What should be left of it, in litres, exact; never below zero. */
    public BigDecimal leftLitres() {
        return stored.event().volume().inLitres().subtract(fedLitres).max(BigDecimal.ZERO);
    }

    private static boolean isFrozen(Timed<ColostrumStored> stored) {
        return stored.event().treatment() == Term.ColostrumTreatment.FROZEN;
    }

    /** The feeds of a calf whose last noted source before them is this colostrum. */
    private static BigDecimal fedOf(CalfRecord calf, Timed<ColostrumStored> stored, Farm farm) {
        List<Timed<ColostrumSourceNoted>> sources = calf.all(ColostrumSourceNoted.class);
        if (sources.isEmpty()) {
            return BigDecimal.ZERO;
        }
        return calf.feeds().stream()
                .filter(feed -> isFrom(feed, sources, stored, farm))
                .map(Feed::litres)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isFrom(
            Feed feed, List<Timed<ColostrumSourceNoted>> sources, Timed<ColostrumStored> stored, Farm farm) {
        return sources.stream()
                .filter(source -> !source.at().isAfter(feed.at()))
                .reduce((earlier, later) -> later)
                .flatMap(source -> Optional.ofNullable(source.event().batch()))
                .flatMap(batch -> farm.storedAs(batch, feed.at()))
                .filter(stored::equals)
                .isPresent();
    }
}
