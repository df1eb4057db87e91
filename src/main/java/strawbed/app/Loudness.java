package strawbed.app;

import strawbed.audio.Sound;

/** Follows the loudest sample of a source. */
final class Loudness {
    /** Below this no microphone's own noise stays: 0.01 % of full scale. */
    private static final int SILENT = 3;

    private int peak;

    void add(Sound block) {
        for (short sample : block.copySamples()) {
            peak = Math.max(peak, Math.abs((int) sample));
        }
    }

    boolean isSilent() {
        return peak <= SILENT;
    }

    int peak() {
        return peak;
    }
}
