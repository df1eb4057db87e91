package strawbed.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarException;
import strawbed.hearing.Phrasebook;
import strawbed.speech.LexiconException;

/**
 * The grammar of a start. The farm's own files are used as they are; where they cannot be used, the last copy of them that
 * could, else the program's: a mistake in a file must not stop a night's work, but it is told.
 */
final class FarmWords {
    private static final String LAST_GOOD = "grammar-last-good";
    private static final String SENTENCES = "grammar-sentences.txt";

    private final Settings settings;
    private final Origin origin;
    private final Phrasebook phrasebook;
    private final Map<String, String> ownFiles;
    private final List<String> told;

    /** Where the grammar in use comes from, in the order in which they are tried. */
    private enum Origin {
        FARM,
        LAST_GOOD,
        PROGRAM
    }

    private FarmWords(
            Settings settings, Origin origin, Phrasebook phrasebook, Map<String, String> ownFiles, List<String> told) {
        this.settings = settings;
        this.origin = origin;
        this.phrasebook = phrasebook;
        this.ownFiles = Map.copyOf(ownFiles);
        this.told = List.copyOf(told);
    }

    /**
     * Reads the first grammar that is without mistakes; new sentences take some seconds.
     *
     * @throws GrammarException if not even the program's can be read
     */
    static FarmWords read(Settings settings) {
        return Files.isDirectory(settings.grammarFolder())
                ? from(Origin.FARM, settings, List.of())
                : from(Origin.PROGRAM, settings, List.of());
    }

    /** The next grammar to try, as this one turned out to be of no use for the recogniser. */
    FarmWords insteadOf(GrammarException fault) {
        if (origin == Origin.PROGRAM) {
            throw fault;
        }
        return next(origin, settings, told, fault);
    }

    private static FarmWords from(Origin origin, Settings settings, List<String> told) {
        if (origin == Origin.PROGRAM) {
            return new FarmWords(
                    settings,
                    origin,
                    Phrasebook.read(Settings.programsGrammar(), PreparedSentences.text()),
                    Map.of(),
                    told);
        }
        try {
            FarmFiles files = new FarmFiles(
                    origin == Origin.FARM
                            ? settings.grammarFolder()
                            : settings.data().resolve(LAST_GOOD));
            String version = Phrasebook.versionOf(files) + "\n";
            String kept = PreparedSentences.kept(settings.data().resolve(SENTENCES));
            String programs = PreparedSentences.text();
            String prepared = programs.startsWith(version) ? programs : kept;
            if (!prepared.startsWith(version)) {
                GrammarFaults.requireMeaning(files, settings);
            }
            return new FarmWords(settings, origin, Phrasebook.read(files, prepared), files.read(), told);
        } catch (GrammarException | LexiconException fault) {
            return next(origin, settings, told, fault);
        }
    }

    private static FarmWords next(Origin origin, Settings settings, List<String> told, RuntimeException fault) {
        List<String> more = new ArrayList<>(told);
        if (origin == Origin.FARM) {
            boolean isKept = Files.isDirectory(settings.data().resolve(LAST_GOOD));
            more.add("The farm's grammar in " + settings.grammarFolder() + " cannot be used: " + fault.getMessage());
            more.add(
                    isKept
                            ? "The last good copy of it is used instead. Mend it; \"strawbed grammar check\" tells all."
                            : "The program's own grammar is used instead, without the farm's words. Mend the farm's;"
                                    + " \"strawbed grammar check\" tells all.");
            return from(isKept ? Origin.LAST_GOOD : Origin.PROGRAM, settings, more);
        }
        more.add("The last good copy cannot be used either: " + fault.getMessage());
        more.add("The program's own grammar is used instead, without the farm's words.");
        return from(Origin.PROGRAM, settings, more);
    }

    /** The grammar without the calves of the record. */
    Grammar grammar() {
        return phrasebook.with(List.of()).grammar();
    }

    Phrasebook phrasebook() {
        return phrasebook;
    }

    /** What a person must be told, in lines; mostly nothing. */
    List<String> told() {
        return told;
    }

    /**
     * After a start that went well: keeps the farm's files as the last good ones, and the sentences made of them.
     *
     * @return what a person must be told, in lines; mostly nothing
     */
    List<String> keep() {
        if (origin != Origin.FARM) {
            return List.of();
        }
        Path data = settings.data();
        try {
            FarmFiles.keep(data.resolve(LAST_GOOD), ownFiles);
            Path sentences = data.resolve(SENTENCES);
            String version = phrasebook.version() + "\n";
            if (!PreparedSentences.text().startsWith(version)
                    && !PreparedSentences.kept(sentences).startsWith(version)) {
                OwnersFile.write(sentences, phrasebook.prepared().getBytes(StandardCharsets.UTF_8));
            }
            return List.of();
        } catch (IOException failure) {
            return List.of("The farm's grammar could not be kept as the last good one: " + failure
                    + ". It is in use; make room in " + data + " and start again.");
        }
    }
}
