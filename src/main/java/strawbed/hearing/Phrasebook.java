package strawbed.hearing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarReader;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.RuleId;
import strawbed.grammar.SentenceMaker;
import strawbed.speech.Lexicon;
import strawbed.speech.RecognizedWord;
import strawbed.speech.Vocabulary;

/**
 * The farm's grammar, read once, and the sentences made of it: the recogniser learns from them which word follows
 * which. The list of open calves is put in last, so that a new list costs next to nothing. Immutable.
 */
public final class Phrasebook {
    private static final String MAIN = "strawbed.abnf";
    private static final String CALVES = "calves.abnf";
    private static final String LEXICON = "lexicon.txt";
    private static final String DECOY_WORDS = "decoys.txt";
    private static final int VERSION_DIGITS = 16;

    /** Stands for the number of a listed calf until the list is known. */
    private static final String LISTED = "listedcalf";

    /** Every run, on every machine, hears with the same sentences. */
    private static final long SEED = 20260101;

    /** Sentences sampled by weight. On tuning voices 20,000 heard 1.2% more right than 9,000, and none more wrong. */
    private static final int SAMPLED = 20_000;

    /** Parts of sentences, for people who pause. */
    private static final int SAMPLED_PARTS = 3_000;

    /** Sentences of other speech. */
    private static final int DECOYS = 3_000;

    private final GrammarSource source;
    private final String version;
    private final Lexicon lexicon;
    private final List<List<String>> templates;
    private final List<List<String>> others;

    private Phrasebook(
            GrammarSource source,
            String version,
            Lexicon lexicon,
            List<List<String>> templates,
            List<List<String>> others) {
        this.source = source;
        this.version = version;
        this.lexicon = lexicon;
        this.templates = templates;
        this.others = others;
    }

    /**
     * Reads the grammar's files and makes the sentences, which takes some seconds.
     *
     * @throws strawbed.grammar.GrammarException if one has a mistake
     */
    public static Phrasebook read(GrammarSource source) {
        return read(source, "");
    }

    /**
     * Reads the grammar's files and takes the sentences that were made of them before.
     *
     * @param prepared what {@link #prepared} gave; when it is of other files the sentences are made anew
     * @throws strawbed.grammar.GrammarException if a file has a mistake
     */
    public static Phrasebook read(GrammarSource source, String prepared) {
        Grammar grammar = GrammarReader.read(source.with(CALVES, calves(LISTED + " {0}")), MAIN);
        String key = key(grammar, source);
        List<List<String>> sentences = prepared.startsWith(key + "\n")
                ? prepared.lines()
                        .skip(1)
                        .map(line -> Arrays.asList(line.split(" ")))
                        .toList()
                : make(grammar, source);
        return new Phrasebook(
                source,
                key,
                Lexicon.parse(LEXICON, source.text(LEXICON)),
                sentences.stream().filter(sentence -> sentence.contains(LISTED)).toList(),
                sentences.stream()
                        .filter(sentence -> !sentence.contains(LISTED))
                        .toList());
    }

    /**
     * The grammar by itself, without any open calf.
     *
     * @throws strawbed.grammar.GrammarException if a file has a mistake
     */
    public static Grammar grammar(GrammarSource source) {
        return GrammarReader.read(source.with(CALVES, calves("$VOID")), MAIN);
    }

    /**
     * What {@link #version} of a phrasebook of these files would be.
     *
     * @throws strawbed.grammar.GrammarException if a file has a mistake
     */
    public static String versionOf(GrammarSource source) {
        return key(grammar(source), source);
    }

    /** The sentences as text, for a later start: the version of the files they are made of, then one a line. */
    public String prepared() {
        return Stream.concat(
                        Stream.of(version),
                        Stream.concat(templates.stream(), others.stream()).map(words -> String.join(" ", words)))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Tells one state of the grammar's files from another: the start of their SHA-256. */
    public String version() {
        return version;
    }

    private static List<List<String>> make(Grammar grammar, GrammarSource source) {
        SentenceMaker maker = new SentenceMaker(grammar);
        RuleId utterance = grammar.ruleNamed("utterance");
        return Stream.of(
                        maker.sample(utterance, SAMPLED, SEED),
                        maker.cover(utterance),
                        maker.sample(grammar.ruleNamed("facts"), SAMPLED_PARTS, SEED),
                        decoys(source.text(DECOY_WORDS), grammar))
                .flatMap(List::stream)
                .toList();
    }

    private static String key(Grammar grammar, GrammarSource source) {
        Set<String> files = new TreeSet<>(Set.of(LEXICON, DECOY_WORDS));
        grammar.rules().forEach(rule -> files.add(rule.id().file()));
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String file : files) {
                digest.update(source.text(file).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /**
     * What can be said with these calves open.
     *
     * @param openCalves their numbers; those over 9999 or not plain numbers cannot be said and are left out
     */
    public FarmGrammar with(Collection<String> openCalves) {
        List<Integer> numbers = openCalves.stream()
                .filter(number -> number.matches("[0-9]{1,4}"))
                .map(Integer::valueOf)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .toList();
        String alternatives = numbers.stream()
                .flatMap(number -> SpokenForms.of(number).stream().map(form -> form + " {" + number + "}"))
                .collect(Collectors.joining("\n    | "));
        Grammar grammar =
                GrammarReader.read(source.with(CALVES, calves(alternatives.isEmpty() ? "$VOID" : alternatives)), MAIN);
        List<List<String>> sentences = new ArrayList<>(others);
        List<List<String>> forms = numbers.stream()
                .flatMap(number -> SpokenForms.of(number).stream())
                .map(form -> Arrays.asList(form.split(" ")))
                .toList();
        if (!forms.isEmpty()) {
            SplittableRandom random = new SplittableRandom(SEED);
            templates.forEach(template -> sentences.add(filled(template, forms, random)));
        }
        return new FarmGrammar(grammar, new Vocabulary(sentences, lexicon));
    }

    /** The stand-ins for words that the model lacks. */
    public Lexicon lexicon() {
        return lexicon;
    }

    private static List<String> filled(List<String> template, List<List<String>> forms, SplittableRandom random) {
        return template.stream()
                .flatMap(word ->
                        word.equals(LISTED) ? forms.get(random.nextInt(forms.size())).stream() : Stream.of(word))
                .toList();
    }

    /** The list of open calves as a grammar file. */
    private static String calves(String alternatives) {
        return """
                #ABNF 1.0 UTF-8;
                language en-US;
                mode voice;
                tag-format <semantics/1.0-literals>;
                public $listed = %s;
                """.formatted(alternatives);
    }

    /** Random chains of common words, some of our own among them, but never a calf and a number. */
    private static List<List<String>> decoys(String text, Grammar grammar) {
        List<String> common = text.lines()
                .filter(line -> !line.startsWith("#"))
                .flatMap(line -> Stream.of(line.strip().split("\\s+")))
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
        List<String> ours = grammar.tokens(List.of(grammar.ruleNamed("facts"))).stream()
                .filter(word -> !word.equals(RecognizedWord.UNKNOWN) && !word.equals(LISTED))
                .toList();
        SplittableRandom random = new SplittableRandom(SEED);
        List<List<String>> chains = new ArrayList<>();
        for (int i = 0; i < DECOYS; i++) {
            List<String> chain = new ArrayList<>();
            int length = 2 + random.nextInt(8);
            for (int k = 0; k < length; k++) {
                List<String> from = random.nextInt(8) == 0 ? ours : common;
                chain.add(from.get(random.nextInt(from.size())));
            }
            chains.add(chain);
        }
        return chains;
    }
}
