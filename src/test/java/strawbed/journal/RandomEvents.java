package strawbed.journal;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** Facts of every kind with random parts, from a seed. */
public final class RandomEvents {
    private static final List<String> TEXTS =
            List.of("130", "0042", "hutch 12", "a \"quoted\" word", "back\\slash", "ligne é, 牛", "\u0000\n\t", "");

    private static final ZoneId[] ZONES = {ZoneId.of("America/Chicago"), ZoneOffset.UTC, ZoneId.of("Europe/Dublin")};

    private final Random random;

    public RandomEvents(Random random) {
        this.random = random;
    }

    /** A fact of any kind. */
    public Event next() {
        List<Class<?>> kinds = kinds();
        return next(kinds.get(random.nextInt(kinds.size())));
    }

    static List<Class<?>> kinds() {
        return Arrays.asList(Event.class.getPermittedSubclasses());
    }

    /** A fact of this kind; a choice of parts that the kind refuses is made again. */
    Event next(Class<?> kind) {
        RecordComponent[] parts = kind.getRecordComponents();
        try {
            Constructor<?> constructor = kind.getDeclaredConstructor(
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
            for (int i = 0; i < 1000; i++) {
                try {
                    return (Event) constructor.newInstance(
                            Arrays.stream(parts).map(this::part).toArray());
                } catch (InvocationTargetException e) {
                    if (!(e.getCause() instanceof IllegalArgumentException)) {
                        throw e;
                    }
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("cannot make a " + kind, e);
        }
        throw new AssertionError("no choice of parts suits " + kind);
    }

    private @Nullable Object part(RecordComponent part) {
        boolean optional = part.getAnnotatedType().isAnnotationPresent(Nullable.class);
        if (optional && random.nextInt(3) == 0) {
            return null;
        }
        Object value = value(part.getType());
        // A sound is the plain name of a file, and not any text.
        return part.getName().equals("sound") ? "0007.wav" : value;
    }

    private Object value(Class<?> type) {
        if (type.isEnum()) {
            return pick(type.getEnumConstants());
        }
        if (type == String.class) {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        }
        if (type == int.class || type == Integer.class) {
            return random.nextInt(7);
        }
        if (type == long.class) {
            return random.nextLong(1L << 50);
        }
        if (type == ZoneId.class) {
            return pick(ZONES);
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        if (type == BigDecimal.class) {
            return amount();
        }
        if (type == SortedMap.class) {
            return new TreeMap<>(Map.of("target_within_hours", "2", "odd " + random.nextInt(9), "\u00e9"));
        }
        if (type == Instant.class) {
            return instant();
        }
        if (type == When.class) {
            Instant from = instant();
            return random.nextBoolean()
                    ? new When.At(from)
                    : new When.Between(from, from.plusSeconds(random.nextInt(40_000)));
        }
        if (type == EventId.class) {
            return new EventId(new UUID(random.nextLong(), random.nextLong()));
        }
        if (type == Volume.class) {
            return new Volume(amount(), pick(VolumeUnit.values()));
        }
        if (type == Mass.class) {
            return new Mass(amount(), pick(MassUnit.values()));
        }
        if (type == Temperature.class) {
            return new Temperature(random.nextBoolean() ? amount() : amount().negate(), pick(TemperatureUnit.values()));
        }
        throw new AssertionError("say how to make a random " + type);
    }

    /** Without trailing zeros, as the quantities keep theirs. */
    private BigDecimal amount() {
        BigDecimal amount =
                BigDecimal.valueOf(random.nextInt(100_000), random.nextInt(4)).stripTrailingZeros();
        return amount.scale() < 0 ? amount.setScale(0) : amount;
    }

    private Instant instant() {
        return Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000));
    }

    private <T> T pick(T[] list) {
        return list[random.nextInt(list.length)];
    }
}
