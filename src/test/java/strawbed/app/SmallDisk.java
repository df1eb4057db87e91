package strawbed.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs a program of the tests on a small file system of its own, or where the machine allows none, under a limit for
 * each file. The program gets the folder and the way, and ends with 0 if all was as it should be.
 */
final class SmallDisk {
    private static final int MEGABYTES = 4;

    private SmallDisk() {}

    /** How the disk is made small. */
    enum Way {
        /** A file system in memory that only this program sees; needs the right to make name spaces. */
        NAMESPACE(
                "unshare",
                "-rm",
                "sh",
                "-c",
                "mount -t tmpfs -o size=" + MEGABYTES + "m,mode=700 tmpfs \"$0\" && exec \"$@\""),
        /** The same for all programs; needs the right to mount. */
        MOUNT(
                "sh",
                "-c",
                "mount -t tmpfs -o size=" + MEGABYTES + "m,mode=700 tmpfs \"$0\" || exit 77; \"$@\"; outcome=$?;"
                        + " umount \"$0\"; exit $outcome"),
        /** No file may become larger than some megabytes (POSIX ulimit, in blocks of 512 or 1024 bytes). */
        FILE_LIMIT("sh", "-c", "ulimit -f 8000 && exec \"$@\"");

        /** One word a line. */
        private final String start;

        Way(String... start) {
            this.start = String.join("\n", start);
        }

        private List<String> start() {
            return start.lines().toList();
        }

        /** Whether this machine lets us. */
        private boolean works(Path folder) throws IOException, InterruptedException {
            List<String> command = new ArrayList<>(start());
            command.add(folder.toString());
            command.add("true");
            try {
                return new ProcessBuilder(command)
                                .redirectErrorStream(true)
                                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                                .start()
                                .waitFor()
                        == 0;
            } catch (IOException notInstalled) {
                return false;
            }
        }
    }

    /** How a program ended, and what it printed. */
    record Outcome(int code, String printed) {}

    /** The first of these ways that works here; empty if none does. */
    static Optional<Way> way(Path folder, Way... ways) throws IOException, InterruptedException {
        for (Way way : ways) {
            if (way.works(folder)) {
                return Optional.of(way);
            }
        }
        return Optional.empty();
    }

    /** @param folder is there and empty */
    static Outcome run(Way way, Class<?> program, Path folder) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(way.start());
        command.add(folder.toString());
        command.addAll(java(program, folder.toString(), way.name()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Outcome(process.waitFor(), printed);
    }

    /** The command line of a program of the tests that starts fast. */
    static List<String> java(Class<?> program, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(List.of(arguments));
        return command;
    }
}
