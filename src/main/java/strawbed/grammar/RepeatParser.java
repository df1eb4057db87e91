package strawbed.grammar;

import strawbed.grammar.RuleExpansion.Repeat;

/** Reads repeats, weights and probabilities (SRGS 1.0, sections 2.4.1 and 2.5). */
final class RepeatParser {

    /** Every time is laid out when matching, so a large count is refused and not silently slow. */
    private static final int MOST = 1000;

    private static final double OPTIONAL = 0.5;
    private static final double ANOTHER = 0.4;

    private final Scanner scan;

    RepeatParser(Scanner scan) {
        this.scan = scan;
    }

    /** A weight such as {@code /3.1/}. */
    double weight() {
        int start = scan.at();
        double weight = betweenSlashes();
        if (!(weight > 0) || Double.isInfinite(weight)) {
            throw scan.mistake(start, "a weight is a number above 0 between slashes, such as /3.1/.");
        }
        return weight;
    }

    /** A repeat such as {@code <1-5 /0.3/>} of what stands before it. */
    Repeat repeat(RuleExpansion expansion) {
        int start = scan.at();
        scan.takes("<");
        int min = count(start);
        int max = min;
        scan.skipBlanks();
        if (scan.takes("-")) {
            scan.skipBlanks();
            max = isDigit(scan.here()) ? count(start) : Repeat.UNBOUNDED;
        }
        if (max < min) {
            throw scan.mistake(start, "this repeat goes from " + min + " down to " + max + ".");
        }
        double probability = max == Repeat.UNBOUNDED ? ANOTHER : OPTIONAL;
        scan.skipBlanks();
        if (scan.here() == '/') {
            int at = scan.at();
            probability = betweenSlashes();
            if (!(probability >= 0 && probability <= 1)) {
                throw scan.mistake(at, "a probability is a number from 0 to 1 between slashes, such as /0.6/.");
            }
            scan.skipBlanks();
        }
        if (!scan.takes(">")) {
            throw malformed(start);
        }
        return new Repeat(expansion, min, max, probability);
    }

    private int count(int start) {
        scan.skipBlanks();
        String digits = scan.run(RepeatParser::isDigit);
        if (digits.isEmpty()) {
            throw malformed(start);
        }
        if (digits.length() > 4 || Integer.parseInt(digits) > MOST) {
            throw scan.mistake(start, "more than " + MOST + " repeats are not supported.");
        }
        return Integer.parseInt(digits);
    }

    private GrammarException malformed(int start) {
        return scan.mistake(start, "a repeat is written <3>, <1-5> or <0->, a reference to a rule $name.");
    }

    /** A number such as 3, 3., .1 or 3.1; not a number when there is none. */
    private double betweenSlashes() {
        scan.takes("/");
        scan.run(Character::isWhitespace);
        String digits = scan.run(c -> c == '.' || isDigit(c));
        scan.run(Character::isWhitespace);
        boolean closed = scan.takes("/");
        return closed && digits.matches("\\d+\\.?\\d*|\\.\\d+") ? Double.parseDouble(digits) : Double.NaN;
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }
}
