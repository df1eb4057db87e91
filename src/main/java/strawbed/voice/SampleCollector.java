package strawbed.voice;

import com.sun.speech.freetts.audio.AudioPlayer;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import javax.sound.sampled.AudioFormat;
import strawbed.audio.Sound;

/** Takes the voice's samples into memory instead of playing them. Owned by one thread. */
final class SampleCollector implements AudioPlayer {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private AudioFormat format = new AudioFormat(Sound.RATE, Short.SIZE, 1, true, true);
    private float volume = 1;

    void clear() {
        bytes.reset();
    }

    short[] samples() {
        ShortBuffer samples = ByteBuffer.wrap(bytes.toByteArray())
                .order(format.isBigEndian() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN)
                .asShortBuffer();
        short[] copy = new short[samples.remaining()];
        samples.get(copy);
        return copy;
    }

    @Override
    public void setAudioFormat(AudioFormat wanted) {
        if (wanted.getSampleRate() != Sound.RATE
                || wanted.getSampleSizeInBits() != Short.SIZE
                || wanted.getChannels() != 1) {
            throw new VoiceException(
                    "The voice speaks in the format " + wanted + " and not 16 kHz, 16 bit, mono.", null);
        }
        format = wanted;
    }

    @Override
    public AudioFormat getAudioFormat() {
        return format;
    }

    @Override
    public boolean write(byte[] audio) {
        return write(audio, 0, audio.length);
    }

    @Override
    public boolean write(byte[] audio, int offset, int size) {
        bytes.write(audio, offset, size);
        return true;
    }

    @Override
    public float getVolume() {
        return volume;
    }

    @Override
    public void setVolume(float volume) {
        this.volume = volume;
    }

    @Override
    public boolean drain() {
        return true;
    }

    @Override
    public boolean end() {
        return true;
    }

    @Override
    public long getTime() {
        return -1;
    }

    // Nothing is played, so there is nothing to begin, hold, stop, close or time.

    @Override
    public void begin(int size) {}

    @Override
    public void pause() {}

    @Override
    public void resume() {}

    @Override
    public void reset() {}

    @Override
    public void cancel() {}

    @Override
    public void close() {}

    @Override
    public void resetTime() {}

    @Override
    public void startFirstSampleTimer() {}

    @Override
    public void showMetrics() {}
}
