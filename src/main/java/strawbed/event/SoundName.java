package strawbed.event;

/** The file name of a sound, as facts bear it. */
public final class SoundName {
    private SoundName() {}

    /**
     * Whether it names a file in the sound folder and nothing else, on every system: no other folder, no drive, no
     * stream of a file, and nothing that a terminal runs.
     */
    public static boolean isPlain(String name) {
        return !name.isBlank()
                && !name.equals(".")
                && !name.contains("..")
                && name.chars().noneMatch(unit -> unit == '/' || unit == '\\' || unit == ':' || cannotBeWritten(unit));
    }

    /** Half of a pair of UTF-16 alone is no letter, so that no disk takes it; a pair is more than any sound needs. */
    private static boolean cannotBeWritten(int unit) {
        return Character.isISOControl(unit) || Character.isSurrogate((char) unit);
    }
}
