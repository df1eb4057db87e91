package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strawbed.audio.AudioException;
import strawbed.audio.WavFile;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;

/**
 * Sounds that neither a fact nor a statement names, because power or program ended between the sound and what it said.
 * They become open statements, each once: the record then names them.
 */
final class FoundSounds {
    /** How the hearing went of what it never came to. */
    static final String VERDICT = "interrupted";

    /** What is known of such a sound in place of a reading. */
    static final String READING = "was being recorded when the program ended";

    private static final Pattern NAME =
            Pattern.compile("([0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12})" + "\\.wav("
                    + Pattern.quote(WavFile.PART) + ")?");

    private final EventJournal journal;
    private final SoundFolder sounds;
    private final List<String> told = new ArrayList<>();
    private int kept;

    private FoundSounds(EventJournal journal, SoundFolder sounds) {
        this.journal = journal;
        this.sounds = sounds;
    }

    /**
     * Puts them among the open statements. Whatever is wrong with a sound or the disk, it stops nothing.
     *
     * @return what a person must be told, in lines; mostly nothing
     */
    static List<String> adopt(EventJournal journal, SoundFolder sounds) {
        FoundSounds found = new FoundSounds(journal, sounds);
        found.look();
        return found.told;
    }

    private void look() {
        try {
            sounds.keepToOwner();
            List<String> names = sounds.names();
            if (names.isEmpty()) {
                return;
            }
            Set<String> looked = new HashSet<>(names);
            names.stream()
                    .filter(FoundSounds::isPart)
                    .map(FoundSounds::wholeName)
                    .forEach(looked::add);
            Set<String> named = journal.named(looked);
            for (String name : names) {
                Matcher ours = NAME.matcher(name);
                if (ours.matches() && !named.contains(name)) {
                    found(name, UUID.fromString(ours.group(1)), named);
                }
            }
        } catch (IOException | JournalException failure) {
            told.add("Sounds of an earlier end may not be among the open statements yet: " + failure.getMessage()
                    + " It is tried again at the next start.");
        }
        if (kept > 0) {
            told.add((kept == 1
                            ? "1 sound " + READING + " and is"
                            : kept + " sounds were being recorded when the" + " program ended and are")
                    + " among the open statements now.");
        }
    }

    private void found(String name, UUID id, Set<String> named) throws IOException {
        try {
            Optional<String> whole = isPart(name) ? whole(name, named) : Optional.of(name);
            if (whole.isPresent()) {
                keep(whole.get(), id);
            }
        } catch (AudioException failure) {
            told.add("A sound of an earlier end cannot be heard and was left as it is: " + failure.getMessage());
        }
    }

    /** The name under which what can be heard of a half-written file is kept; empty if that is nothing new. */
    private Optional<String> whole(String part, Set<String> named) throws IOException {
        Path from = sounds.file(part);
        String name = wholeName(part);
        if (!WavFile.hasSamples(from)) {
            Files.delete(from);
            return Optional.empty();
        }
        if (!Files.exists(sounds.file(name))) {
            WavFile.finish(from, sounds.file(name));
            // Named already where the record took the words of what the disk then had no room for.
            return named.contains(name) ? Optional.empty() : Optional.of(name);
        }
        if (WavFile.read(sounds.file(name)).startsWith(WavFile.read(from))) {
            Files.delete(from);
            return Optional.empty();
        }
        String other = sounds.newName();
        WavFile.finish(from, sounds.file(other));
        return Optional.of(other);
    }

    private static boolean isPart(String name) {
        return name.endsWith(WavFile.PART);
    }

    private static String wholeName(String part) {
        return part.substring(0, part.length() - WavFile.PART.length());
    }

    private void keep(String name, UUID id) {
        Duration length = WavFile.duration(sounds.file(name));
        // A file gets its name when the utterance ends: milliseconds of a UUID of version 7 (RFC 9562, section 5.7).
        Instant end = Instant.ofEpochMilli(id.getMostSignificantBits() >>> 16);
        journal.keep(new NewOpenStatement(end.minus(length), length, VERDICT, List.of(), READING, name));
        kept++;
    }
}
