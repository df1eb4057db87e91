package strawbed.audio;

/** Changes a stream of sound bit by bit, for recognisers and never for the record. Owned by one thread. */
public interface SoundFilter {
    /** Takes the next block of a stream and gives what is ready; the first block of a stream says where it begins. */
    Sound accept(Sound block);

    /** Takes the end of the stream and gives the rest; the next block begins another stream. */
    Sound finish();

    /** A whole sound, changed. */
    default Sound changed(Sound sound) {
        return accept(sound).join(finish());
    }
}
