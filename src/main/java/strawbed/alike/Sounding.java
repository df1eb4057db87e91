package strawbed.alike;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Phones in order, and how far they are from others: an edit distance in which near phones cost less. */
record Sounding(List<Phone> phones) {
    Sounding {
        phones = List.copyOf(phones);
    }

    /** How words sound one after the other; words without a sound count as nothing. */
    static Sounding of(List<String> words, Function<String, List<String>> pronunciation) {
        return new Sounding(words.stream()
                .flatMap(word -> pronunciation.apply(word).stream())
                .flatMap(Sounding::known)
                .toList());
    }

    private static Stream<Phone> known(String phone) {
        // The dictionary's sign for a pause is no sound.
        return phone.equals("pau") ? Stream.empty() : Stream.of(Phone.named(phone));
    }

    /** What it costs to take this for the other. */
    double distance(Sounding other) {
        double[] row = start(other.phones);
        for (Phone phone : phones) {
            row = next(row, phone, other.phones);
        }
        return row[row.length - 1];
    }

    /** From 0, nothing in common, to 1, the same. */
    double closeness(Sounding other) {
        double most = Math.max(weight(), other.weight());
        return most == 0 ? 0 : Math.max(0, 1 - distance(other) / most);
    }

    private double weight() {
        return phones.stream().mapToDouble(Phone::weight).sum();
    }

    /** The costs of having heard nothing yet of each beginning of the target. */
    static double[] start(List<Phone> target) {
        double[] row = new double[target.size() + 1];
        for (int i = 0; i < target.size(); i++) {
            row[i + 1] = row[i] + target.get(i).weight();
        }
        return row;
    }

    /** The costs after one more phone was heard. */
    static double[] next(double[] before, Phone phone, List<Phone> target) {
        double[] row = new double[before.length];
        row[0] = before[0] + phone.weight();
        for (int i = 1; i < row.length; i++) {
            Phone wanted = target.get(i - 1);
            row[i] = Math.min(
                    before[i - 1] + phone.distance(wanted),
                    Math.min(before[i] + phone.weight(), row[i - 1] + wanted.weight()));
        }
        return row;
    }
}
