package strawbed.app;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeSet;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarSource;

/** Tells one state of the grammar's files from another, so that the record says by which one a fact was heard. */
final class GrammarVersion {
    private GrammarVersion() {}

    /** The first eight hexadecimal digits of the SHA-256 of all files that take part. */
    static String of(Grammar grammar, GrammarSource source) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            TreeSet<String> files = new TreeSet<>();
            grammar.rules().forEach(rule -> files.add(rule.id().file()));
            files.add("lexicon.txt");
            for (String file : files) {
                digest.update(source.text(file).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }
}
