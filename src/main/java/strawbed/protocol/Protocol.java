package strawbed.protocol;

import static strawbed.protocol.Setting.*;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One protocol: a value for every setting. Equal where all values are. Times are ages from birth unless their setting
 * says otherwise.
 */
public final class Protocol {
    private static final Protocol USUAL = of(Map.of());
    private static final int VERSION_DIGITS = 8;

    private final Map<Setting, String> values;
    private final Map<Setting, BigDecimal> numbers = new EnumMap<>(Setting.class);
    private final Map<Setting, Duration> times = new EnumMap<>(Setting.class);
    private final List<Duration> watch;
    private final Set<CountedSign> signs;
    private final String version;

    private Protocol(Map<Setting, String> values) {
        this.values = values;
        values.forEach((setting, value) -> {
            if (setting.allowed() instanceof Allowed.Amount) {
                BigDecimal number = new BigDecimal(value);
                numbers.put(setting, number);
                time(setting, number);
            }
        });
        this.watch = Allowed.parts(value(WATCH_MINUTES)).stream()
                .map(minutes -> minutes(new BigDecimal(minutes)))
                .toList();
        List<String> counted = Allowed.parts(value(COUNTED));
        EnumSet<CountedSign> on = EnumSet.noneOf(CountedSign.class);
        Arrays.stream(CountedSign.values())
                .filter(sign -> counted.contains(sign.word()))
                .forEach(on::add);
        this.signs = Collections.unmodifiableSet(on);
        this.version = version(settings());
    }

    /** The protocol with the usual values. */
    public static Protocol usual() {
        return USUAL;
    }

    /** What is wrong with these values, by the settings' names; what is missing has its usual value. */
    public static List<ProtocolFault> faults(Map<String, String> settings) {
        List<ProtocolFault> faults = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            String value = settings.get(setting.key());
            if (value != null && !setting.allowed().allows(value)) {
                faults.add(new ProtocolFault(
                        setting,
                        null,
                        setting.key() + " is " + value + ", but must be "
                                + setting.allowed().words()));
            }
        }
        if (faults.isEmpty()) {
            Protocol read = new Protocol(complete(settings));
            ASCENDING.forEach(chain -> read.outOfOrder(chain, faults));
        }
        return List.copyOf(faults);
    }

    /**
     * The protocol with these values by the settings' names; what is missing has its usual value, and a name that no
     * setting has is left out, as a later program may have written it.
     *
     * @throws IllegalArgumentException if a value cannot be; ask {@link #faults} first
     */
    public static Protocol of(Map<String, String> settings) {
        List<ProtocolFault> faults = faults(settings);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.get(0).sentence());
        }
        return new Protocol(complete(settings));
    }

    /** The protocol with those of these values that can be; the others have their usual value. */
    static Protocol nearest(Map<String, String> settings) {
        Map<String, String> left = new TreeMap<>(settings);
        for (List<ProtocolFault> faults = faults(left); !faults.isEmpty(); faults = faults(left)) {
            int before = left.size();
            faults.forEach(fault -> left.remove(fault.setting().key()));
            if (left.size() == before) {
                left.clear();
            }
        }
        return new Protocol(complete(left));
    }

    /** Eight digits that tell protocols apart. */
    public String version() {
        return version;
    }

    /** Every value as text, by the settings' names. */
    public SortedMap<String, String> settings() {
        SortedMap<String, String> settings = new TreeMap<>();
        values.forEach((setting, value) -> settings.put(setting.key(), value));
        return settings;
    }

    /** A value as text. */
    public String value(Setting setting) {
        String value = values.get(setting);
        if (value == null) {
            throw new IllegalArgumentException("no value for " + setting);
        }
        return value;
    }

    /** Whether the farm chose another value than the usual one. */
    public boolean isChanged(Setting setting) {
        return !value(setting).equals(setting.allowed().plain(setting.allowed().usual()));
    }

    /** The settings for which the farm chose another value than the usual one, in their order. */
    public List<Setting> changed() {
        return Arrays.stream(Setting.values()).filter(this::isChanged).toList();
    }

    /**
     * The number that a setting has, in the unit of its name.
     *
     * @throws IllegalArgumentException if the setting is none of a number
     */
    public BigDecimal number(Setting setting) {
        BigDecimal number = numbers.get(setting);
        if (number == null) {
            throw new IllegalArgumentException(setting + " is no number");
        }
        return number;
    }

    /**
     * The time that a setting has.
     *
     * @throws IllegalArgumentException if the setting is none of a time
     */
    public Duration time(Setting setting) {
        Duration time = times.get(setting);
        if (time == null) {
            throw new IllegalArgumentException(setting + " is no time");
        }
        return time;
    }

    /**
     * Whether a setting is on.
     *
     * @throws IllegalArgumentException if the setting is none of yes or no
     */
    public boolean isOn(Setting setting) {
        if (!(setting.allowed() instanceof Allowed.YesOrNo)) {
            throw new IllegalArgumentException(setting + " is neither yes nor no");
        }
        return value(setting).equals("yes");
    }

    /** When a calf of a hard birth is checked, after the start of the watch; ascending. */
    public List<Duration> watch() {
        return watch;
    }

    /** The signs that count. */
    public Set<CountedSign> signs() {
        return signs;
    }

    /** The units to show. */
    public Units units() {
        return switch (value(UNITS)) {
            case "US" -> Units.US;
            case "metric" -> Units.METRIC;
            default -> Units.AS_SPOKEN;
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Protocol protocol && values.equals(protocol.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return "protocol " + version;
    }

    private void outOfOrder(List<Setting> chain, List<ProtocolFault> faults) {
        for (int i = 1; i < chain.size(); i++) {
            Setting lower = chain.get(i - 1);
            Setting higher = chain.get(i);
            if (number(lower).compareTo(number(higher)) >= 0) {
                faults.add(new ProtocolFault(
                        higher,
                        lower,
                        higher.key() + " is " + value(higher) + ", but must be more than " + lower.key() + ", which is "
                                + value(lower)));
            }
        }
    }

    private static Map<Setting, String> complete(Map<String, String> settings) {
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        for (Setting setting : Setting.values()) {
            String value =
                    settings.getOrDefault(setting.key(), setting.allowed().usual());
            values.put(setting, setting.allowed().plain(value));
        }
        return values;
    }

    private void time(Setting setting, BigDecimal number) {
        String name = setting.name();
        if (name.endsWith("_SECONDS")) {
            times.put(setting, seconds(number));
        } else if (name.endsWith("_MINUTES")) {
            times.put(setting, minutes(number));
        } else if (name.endsWith("_HOURS")) {
            times.put(setting, minutes(number.multiply(BigDecimal.valueOf(60))));
        } else if (name.endsWith("_DAYS")) {
            times.put(setting, minutes(number.multiply(BigDecimal.valueOf(24 * 60L))));
        }
    }

    private static Duration minutes(BigDecimal minutes) {
        return seconds(minutes.multiply(BigDecimal.valueOf(60)));
    }

    private static Duration seconds(BigDecimal seconds) {
        return Duration.ofMillis(seconds.movePointRight(3).longValue());
    }

    private static String version(SortedMap<String, String> settings) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] hash = digest.digest(settings.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, VERSION_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
