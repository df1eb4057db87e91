package strawbed.audio;

import java.lang.reflect.Proxy;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.TargetDataLine;

/** A microphone's line that gives what a test puts in; then it waits, as a live line does, until it is closed. */
final class FakeLine {
    private static final byte[] GONE = {};

    private final BlockingQueue<byte[]> given = new LinkedBlockingQueue<>();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final CountDownLatch allTaken = new CountDownLatch(1);
    private volatile AudioFormat format = SoundDevices.FORMAT;
    private volatile int available;
    private volatile boolean closeHangs;

    void give(int blocks, short value) {
        for (int i = 0; i < blocks; i++) {
            ByteBuffer bytes = ByteBuffer.allocate(640).order(ByteOrder.LITTLE_ENDIAN);
            while (bytes.hasRemaining()) {
                bytes.putShort(value);
            }
            given.add(bytes.array());
        }
    }

    /** From here on every read gives 0 at once, as Java does when a plug is pulled. */
    void pullPlug() {
        given.add(GONE);
    }

    void deliver(AudioFormat other) {
        format = other;
    }

    /** As Java's lines do while a sound server is frozen. */
    void hangOnClose() {
        closeHangs = true;
    }

    void fillBuffer() {
        available = 16_000;
    }

    /** Waits until the capture thread has taken all and asks for more. */
    void awaitAllTaken() throws InterruptedException {
        allTaken.await();
    }

    void awaitClosed() throws InterruptedException {
        closed.await();
    }

    TargetDataLine line() {
        return (TargetDataLine) Proxy.newProxyInstance(
                FakeLine.class.getClassLoader(),
                new Class<?>[] {TargetDataLine.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "read" -> read((byte[]) arguments[0]);
                    case "available" -> available;
                    case "getBufferSize" -> 16_000;
                    case "getFormat" -> format;
                    case "start" -> null;
                    case "close" -> {
                        closed.countDown();
                        given.add(GONE);
                        if (closeHangs) {
                            new CountDownLatch(1).await();
                        }
                        yield null;
                    }
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }

    private int read(byte[] into) throws InterruptedException {
        if (given.isEmpty()) {
            allTaken.countDown();
        }
        byte[] next = given.take();
        if (next.length == 0) {
            given.add(GONE);
        }
        System.arraycopy(next, 0, into, 0, next.length);
        return next.length;
    }
}
