package strawbed.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strawbed.audio.AudioSource;
import strawbed.audio.Endpointer;
import strawbed.audio.Sound;

/** Cuts a sound as the recorder does, without hearing it. */
final class Cut {
    private Cut() {}

    static List<Sound> utterances(Sound sound) {
        Endpointer endpointer = new Endpointer();
        List<Sound> utterances = new ArrayList<>();
        for (int at = 0; at < sound.length(); at += AudioSource.BLOCK) {
            endpointer
                    .accept(sound.slice(at, Math.min(sound.length(), at + AudioSource.BLOCK)))
                    .ifPresent(utterances::add);
        }
        endpointer.finish().ifPresent(utterances::add);
        return utterances;
    }

    /** The longest utterance of a sound; the whole sound where none is cut out. */
    static Sound longest(Sound sound) {
        return utterances(sound).stream()
                .max(Comparator.comparing(Sound::length))
                .orElse(sound);
    }
}
