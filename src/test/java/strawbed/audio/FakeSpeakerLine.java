package strawbed.audio;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.Proxy;
import java.util.concurrent.CountDownLatch;
import javax.sound.sampled.SourceDataLine;

/** A speaker's line that keeps what is written, until it is stopped, pulled out or holds its writer. */
final class FakeSpeakerLine {
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final CountDownLatch stopped = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);
    private final CountDownLatch full = new CountDownLatch(1);
    private final int room;
    private final boolean pulledOut;

    /** @param room how many bytes it takes; then a write waits, as a sleeping device lets it, or gives 0 */
    FakeSpeakerLine(int room, boolean pulledOut) {
        this.room = room;
        this.pulledOut = pulledOut;
    }

    static FakeSpeakerLine whole() {
        return new FakeSpeakerLine(Integer.MAX_VALUE, false);
    }

    synchronized byte[] written() {
        return written.toByteArray();
    }

    /** Waits until there is no more room. */
    void awaitFull() throws InterruptedException {
        full.await();
    }

    void awaitClosed() throws InterruptedException {
        closed.await();
    }

    SourceDataLine line() {
        return (SourceDataLine) Proxy.newProxyInstance(
                FakeSpeakerLine.class.getClassLoader(),
                new Class<?>[] {SourceDataLine.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "write" -> write((byte[]) arguments[0], (int) arguments[1], (int) arguments[2]);
                    case "stop" -> {
                        stopped.countDown();
                        yield null;
                    }
                    case "close" -> {
                        stopped.countDown();
                        closed.countDown();
                        yield null;
                    }
                    case "drain", "flush" -> null;
                    case "hashCode" -> System.identityHashCode(proxy);
                    case "equals" -> proxy == arguments[0];
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }

    private int write(byte[] bytes, int from, int count) throws InterruptedException {
        synchronized (this) {
            if (written.size() + count <= room) {
                written.write(bytes, from, count);
                return count;
            }
        }
        full.countDown();
        if (!pulledOut) {
            stopped.await();
        }
        return 0;
    }
}
