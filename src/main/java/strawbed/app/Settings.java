package strawbed.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import strawbed.grammar.GrammarSource;

/**
 * Where things are and what the time is: the only place that asks the system.
 *
 * @param data the folder of the farm's record
 * @param model the folder of the speech model, where the farm chose one
 * @param zone the farm's zone
 */
record Settings(Path data, Optional<Path> model, Clock clock, ZoneId zone) {
    static Settings of(Optional<Path> data, Optional<Path> model) {
        Optional<Path> ofTests =
                Optional.ofNullable(System.getProperty("strawbed.model")).map(Path::of);
        return new Settings(
                data.orElseGet(Settings::userData), model.or(() -> ofTests), Clock.systemUTC(), ZoneId.systemDefault());
    }

    Settings withData(Path other) {
        return new Settings(other, model, clock, zone);
    }

    Settings withClock(Clock other) {
        return new Settings(data, model, other, zone);
    }

    /** Where the farm's own files of the grammar are, if it has any. */
    Path grammarFolder() {
        return data.resolve("grammar");
    }

    /** The farm's own files of the grammar where there are some, and the program's for the others. */
    GrammarSource grammar() {
        return grammar(grammarFolder());
    }

    /** The same with the farm's files from another folder. */
    static GrammarSource grammar(Path own) {
        return Files.isDirectory(own) ? GrammarSource.directory(own, programsGrammar()) : programsGrammar();
    }

    static GrammarSource programsGrammar() {
        return GrammarSource.resources(Settings.class.getClassLoader(), "grammar/");
    }

    /** Where the program may unpack its speech model: always the user's folder, whatever the record's is. */
    static Path userData() {
        if (System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")) {
            return Path.of(System.getenv().getOrDefault("LOCALAPPDATA", System.getProperty("user.home")), "Strawbed");
        }
        String xdg = System.getenv("XDG_DATA_HOME");
        Path base = xdg != null && !xdg.isBlank()
                ? Path.of(xdg)
                : Path.of(System.getProperty("user.home"), ".local", "share");
        return base.resolve("strawbed");
    }
}
