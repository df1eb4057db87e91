package strawbed.bench;

import java.util.List;

/**
 * How a recording with a label came out.
 *
 * @param slots words of the label, or its tags where they are given
 * @param right those that were heard, in their order
 */
record Labelled(Outcome outcome, int slots, int right) {
    /**
     * What the program printed of one utterance.
     *
     * @param tags the grammar's tags, in their order
     */
    record Utterance(String verdict, List<String> words, List<String> tags) {
        boolean isUnderstood() {
            return verdict.equals("understood");
        }
    }

    /** Compares what was heard of a recording with its label. */
    static Labelled of(Label label, List<Utterance> heard) {
        List<Utterance> taken = heard.stream().filter(Utterance::isUnderstood).toList();
        List<String> said = label.tags().orElse(label.words());
        List<String> got = taken.stream()
                .flatMap(one -> (label.tags().isPresent() ? one.tags() : one.words()).stream())
                .toList();
        return new Labelled(outcome(said, got, taken.size()), said.size(), common(said, got));
    }

    /** Nothing heard of a recording in which nothing is said is right. */
    private static Outcome outcome(List<String> said, List<String> got, int utterances) {
        if (utterances == 0) {
            return said.isEmpty() ? Outcome.RIGHT : Outcome.NOT_UNDERSTOOD;
        }
        return utterances == 1 && said.equals(got) ? Outcome.RIGHT : Outcome.WRONG;
    }

    /** The length of the longest list that is in both in its order (textbook dynamic programming). */
    private static int common(List<String> said, List<String> got) {
        int[][] longest = new int[said.size() + 1][got.size() + 1];
        for (int i = 1; i <= said.size(); i++) {
            for (int j = 1; j <= got.size(); j++) {
                longest[i][j] = said.get(i - 1).equals(got.get(j - 1))
                        ? longest[i - 1][j - 1] + 1
                        : Math.max(longest[i - 1][j], longest[i][j - 1]);
            }
        }
        return longest[said.size()][got.size()];
    }
}
