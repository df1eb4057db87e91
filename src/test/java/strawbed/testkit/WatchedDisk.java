package strawbed.testkit;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The machine's own disk, which also tells in which order files are written, forced to the disk and renamed: a test
 * cannot cut the power, but it can see that nothing is built on what a power cut could still take.
 */
public final class WatchedDisk extends FileSystemProvider {
    private final FileSystem real;
    private final Consumer<String> told;
    private final FileSystem watched = new Watched();

    private WatchedDisk(FileSystem real, Consumer<String> told) {
        this.real = real;
        this.told = told;
    }

    /**
     * The same place, watched.
     *
     * @param told is given "write FILE", "force FILE", "move FILE to FILE" and "delete FILE", by names without folders
     */
    public static Path at(Path place, Consumer<String> told) {
        return new WatchedDisk(place.getFileSystem(), told).watched(place);
    }

    private Path watched(Path path) {
        return (Path) Proxy.newProxyInstance(
                WatchedDisk.class.getClassLoader(),
                new Class<?>[] {Path.class, Real.class},
                (proxy, method, arguments) -> asked(path, method, arguments));
    }

    /** The path below a watched one. */
    private interface Real {
        Path real();
    }

    private @Nullable Object asked(Path path, Method method, Object @Nullable [] arguments) throws Throwable {
        if (method.getName().equals("real")) {
            return path;
        }
        if (method.getName().equals("getFileSystem")) {
            return watched;
        }
        Object[] below = arguments == null ? new Object[0] : arguments.clone();
        for (int i = 0; i < below.length; i++) {
            below[i] = below[i] instanceof Real one ? one.real() : below[i];
        }
        try {
            @Nullable Object answer = method.invoke(path, below);
            return answer instanceof Path other ? watched(other) : answer;
        } catch (InvocationTargetException e) {
            throw e.getCause() == null ? e : e.getCause();
        }
    }

    private static Path below(Path path) {
        return path instanceof Real one ? one.real() : path;
    }

    private FileSystemProvider disk() {
        return real.provider();
    }

    private static UnsupportedOperationException unwatched() {
        return new UnsupportedOperationException("no test needed this of a watched disk yet");
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> how, FileAttribute<?>... attributes)
            throws IOException {
        return new Channel(
                disk().newFileChannel(below(path), how, attributes),
                path.getFileName().toString());
    }

    @Override
    public void move(Path from, Path to, CopyOption... how) throws IOException {
        disk().move(below(from), below(to), how);
        told.accept("move " + from.getFileName() + " to " + to.getFileName());
    }

    @Override
    public void delete(Path path) throws IOException {
        disk().delete(below(path));
        told.accept("delete " + path.getFileName());
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        disk().createDirectory(below(folder), attributes);
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        disk().checkAccess(below(path), modes);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... how)
            throws IOException {
        return disk().readAttributes(below(path), type, how);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... how) throws IOException {
        return disk().readAttributes(below(path), names, how);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... how) {
        return disk().getFileAttributeView(below(path), type, how);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return disk().isSameFile(below(one), below(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return disk().isHidden(below(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return disk().getFileStore(below(path));
    }

    @Override
    public String getScheme() {
        return "watched";
    }

    @Override
    public SeekableByteChannel newByteChannel(Path path, Set<? extends OpenOption> how, FileAttribute<?>... attributes)
            throws IOException {
        return newFileChannel(path, how, attributes);
    }

    @Override
    public FileSystem newFileSystem(URI place, Map<String, ?> settings) {
        throw unwatched();
    }

    @Override
    public FileSystem getFileSystem(URI place) {
        throw unwatched();
    }

    @Override
    public Path getPath(URI place) {
        throw unwatched();
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        return disk().newDirectoryStream(below(folder), filter);
    }

    @Override
    public void copy(Path from, Path to, CopyOption... how) {
        throw unwatched();
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... how) {
        throw unwatched();
    }

    private final class Watched extends FileSystem {
        @Override
        public FileSystemProvider provider() {
            return WatchedDisk.this;
        }

        @Override
        public void close() {
            throw unwatched();
        }

        @Override
        public boolean isOpen() {
            return real.isOpen();
        }

        @Override
        public boolean isReadOnly() {
            return real.isReadOnly();
        }

        @Override
        public String getSeparator() {
            return real.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            throw unwatched();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            throw unwatched();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return real.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return watched(real.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            throw unwatched();
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            throw unwatched();
        }

        @Override
        public WatchService newWatchService() {
            throw unwatched();
        }
    }

    private final class Channel extends FileChannel {
        private final FileChannel file;
        private final String name;

        Channel(FileChannel file, String name) {
            this.file = file;
            this.name = name;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            told.accept("write " + name);
            return file.write(bytes);
        }

        @Override
        public int write(ByteBuffer bytes, long at) throws IOException {
            told.accept("write " + name);
            return file.write(bytes, at);
        }

        @Override
        public long write(ByteBuffer[] all, int offset, int length) throws IOException {
            told.accept("write " + name);
            return file.write(all, offset, length);
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            told.accept("write " + name);
            file.truncate(size);
            return this;
        }

        @Override
        public void force(boolean all) throws IOException {
            file.force(all);
            told.accept("force " + name);
        }

        @Override
        public int read(ByteBuffer bytes) throws IOException {
            return file.read(bytes);
        }

        @Override
        public int read(ByteBuffer bytes, long at) throws IOException {
            return file.read(bytes, at);
        }

        @Override
        public long read(ByteBuffer[] all, int offset, int length) throws IOException {
            return file.read(all, offset, length);
        }

        @Override
        public long position() throws IOException {
            return file.position();
        }

        @Override
        public FileChannel position(long at) throws IOException {
            file.position(at);
            return this;
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }

        @Override
        public long transferTo(long at, long count, WritableByteChannel to) {
            throw unwatched();
        }

        @Override
        public long transferFrom(ReadableByteChannel from, long at, long count) {
            throw unwatched();
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long at, long size) {
            throw unwatched();
        }

        @Override
        public FileLock lock(long at, long size, boolean isShared) {
            throw unwatched();
        }

        @Override
        public FileLock tryLock(long at, long size, boolean isShared) {
            throw unwatched();
        }
    }
}
