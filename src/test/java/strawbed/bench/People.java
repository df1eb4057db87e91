package strawbed.bench;

import java.nio.file.Path;
import java.util.List;

/**
 * How recordings of real people came out.
 *
 * @param digits single digits that were recorded
 * @param digitsRight those that were understood as the digit that was said
 * @param sequence what was heard of the three rows of digits
 * @param others utterances that are no statements
 * @param othersUnderstood those that would have become a record
 * @param othersAsked those that the program would have asked about
 */
public record People(
        int digits, int digitsRight, List<String> sequence, int others, int othersUnderstood, int othersAsked) {
    /** What the speaker of the rows said. */
    public static final List<String> ROWS =
            List.of("one zero zero zero one", "nine oh two one oh", "zero one eight zero three");

    private static final List<String> DIGITS =
            List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    public People {
        sequence = List.copyOf(sequence);
    }

    /**
     * Listens to them.
     *
     * @param digits files whose names begin with the digit
     */
    public static People heard(Material material, List<Path> digits, Path sequence, List<Path> others) {
        String anyDigit = String.join(" | ", DIGITS);
        Path oneDigit = material.grammar("digit.abnf", "public $all = " + anyDigit + ";");
        Path digitRow =
                material.grammar("digits.abnf", "public $all = ($digit)<1-12>;", "$digit = " + anyDigit + " | oh;");
        List<Path> padded = material.amidQuiet(digits);
        HearRun singles = HearRun.forGrammar(oneDigit, padded);
        HearRun rows = HearRun.forGrammar(digitRow, List.of(sequence));
        HearRun orders = HearRun.forCalves(others);
        return new People(
                digits.size(),
                (int) padded.stream().filter(file -> isRight(file, singles)).count(),
                rows.lines().stream()
                        .filter(HeardLine::isUnderstood)
                        .map(HeardLine::words)
                        .toList(),
                others.size(),
                orders.filesWith(HeardLine::isUnderstood),
                orders.filesWith(HeardLine::isUnsure));
    }

    private static boolean isRight(Path file, HearRun run) {
        String said = DIGITS.get(Character.digit(file.getFileName().toString().charAt(0), 10));
        List<HeardLine> lines = run.of(file);
        return lines.size() == 1
                && lines.get(0).isUnderstood()
                && lines.get(0).words().equals(said);
    }
}
