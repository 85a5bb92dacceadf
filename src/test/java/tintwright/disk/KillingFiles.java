package tintwright.disk;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.StreamSupport;

/**
 * The disk of the machine, on which the process dies (without any of its handlers) at the n-th thing that changes
 * anything: a file begun, bytes written (half of them then are), forced out, cut off, moved, deleted, a folder made.
 */
final class KillingFiles extends FileSystemProvider {
    private final FileSystem system = new KillingSystem();
    private final AtomicLong left;

    private final boolean endsTheProcess;
    private final List<FileChannel> open = new ArrayList<>();

    private KillingFiles(long deadlyStep, boolean endsTheProcess) {
        this.left = new AtomicLong(deadlyStep);
        this.endsTheProcess = endsTheProcess;
    }

    /** Thrown at the deadly step and at every one after it: whoever cleans up behind it finds a dead disk. */
    static final class Death extends Error {
        Death() {
            super("the disk is gone");
        }
    }

    /** @return the same folder on a disk where the process ends, without any of its handlers */
    static Path at(Path folder, long deadlyStep) {
        return new KillingFiles(deadlyStep, true).wrap(folder.toAbsolutePath());
    }

    /** @return the same folder on a disk where the work ends, for many deaths in one process */
    static Path dying(Path folder, long deadlyStep) {
        return new KillingFiles(deadlyStep, false).wrap(folder.toAbsolutePath());
    }

    void die() {
        if (endsTheProcess) {
            Runtime.getRuntime().halt(137);
        }
        // As the system does when a process ends: its locks go with its files.
        for (FileChannel channel : open) {
            try {
                channel.close();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
        throw new Death();
    }

    /** @return whether this is the deadly step; those after it are not begun at all */
    boolean isTheLast() {
        long now = left.decrementAndGet();
        if (now < 0) {
            throw new Death();
        }
        return now == 0;
    }

    void step() {
        if (isTheLast()) {
            die();
        }
    }

    private Path wrap(Path real) {
        return real == null ? null : new Wrapped(real);
    }

    private static Path real(Path path) {
        return path instanceof Wrapped wrapped ? wrapped.real : path;
    }

    private static FileSystemProvider of(Path path) {
        return real(path).getFileSystem().provider();
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        if (options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND)) {
            step();
        }
        FileChannel channel = FileChannel.open(real(path), options, attributes);
        open.add(channel);
        return new KillingChannel(this, channel);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options.isEmpty() ? Set.of(StandardOpenOption.READ) : options, attributes);
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        step();
        of(folder).createDirectory(real(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        step();
        of(path).delete(real(path));
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        step();
        Files.copy(real(from), real(to), options);
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        step();
        Files.move(real(from), real(to), options);
        step();
    }

    @Override
    @SuppressWarnings("StreamResourceLeak") // It is closed by the one that is handed out.
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        DirectoryStream<Path> found = Files.newDirectoryStream(real(folder), path -> filter.accept(wrap(path)));
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return StreamSupport.stream(found.spliterator(), false)
                        .map(KillingFiles.this::wrap)
                        .iterator();
            }

            @Override
            public void close() throws IOException {
                found.close();
            }
        };
    }

    @Override
    public boolean isSameFile(Path a, Path b) throws IOException {
        return Files.isSameFile(real(a), real(b));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return Files.isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return Files.getFileStore(real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        of(path).checkAccess(real(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return Files.getFileAttributeView(real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return Files.readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options) throws IOException {
        return Files.readAttributes(real(path), names, options);
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options) throws IOException {
        step();
        Files.setAttribute(real(path), name, value, options);
    }

    @Override
    public String getScheme() {
        return "killing";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> settings) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    private final class KillingSystem extends FileSystem {
        @Override
        public FileSystemProvider provider() {
            return KillingFiles.this;
        }

        @Override
        public void close() {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return File.separator;
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            throw new UnsupportedOperationException();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            throw new UnsupportedOperationException();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return Set.of("basic");
        }

        @Override
        public Path getPath(String first, String... more) {
            return wrap(Path.of(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            throw new UnsupportedOperationException();
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            throw new UnsupportedOperationException();
        }

        @Override
        public WatchService newWatchService() {
            throw new UnsupportedOperationException();
        }
    }

    private final class Wrapped implements Path {
        private final Path real;

        Wrapped(Path real) {
            this.real = real;
        }

        @Override
        public FileSystem getFileSystem() {
            return system;
        }

        @Override
        public boolean isAbsolute() {
            return real.isAbsolute();
        }

        @Override
        public Path getRoot() {
            return wrap(real.getRoot());
        }

        @Override
        public Path getFileName() {
            return wrap(real.getFileName());
        }

        @Override
        public Path getParent() {
            return wrap(real.getParent());
        }

        @Override
        public int getNameCount() {
            return real.getNameCount();
        }

        @Override
        public Path getName(int index) {
            return wrap(real.getName(index));
        }

        @Override
        public Path subpath(int from, int to) {
            return wrap(real.subpath(from, to));
        }

        @Override
        public boolean startsWith(Path other) {
            return real.startsWith(real(other));
        }

        @Override
        public boolean endsWith(Path other) {
            return real.endsWith(real(other));
        }

        @Override
        public Path normalize() {
            return wrap(real.normalize());
        }

        @Override
        public Path resolve(Path other) {
            return wrap(real.resolve(real(other)));
        }

        @Override
        public Path relativize(Path other) {
            return wrap(real.relativize(real(other)));
        }

        @Override
        public URI toUri() {
            return real.toUri();
        }

        @Override
        public Path toAbsolutePath() {
            return wrap(real.toAbsolutePath());
        }

        @Override
        public Path toRealPath(LinkOption... options) throws IOException {
            return wrap(real.toRealPath(options));
        }

        @Override
        public WatchKey register(WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int compareTo(Path other) {
            return real.compareTo(real(other));
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Wrapped wrapped && wrapped.real.equals(real);
        }

        @Override
        public int hashCode() {
            return real.hashCode();
        }

        @Override
        public String toString() {
            return real.toString();
        }
    }
}
