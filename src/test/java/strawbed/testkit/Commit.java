package strawbed.testkit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** What the measured program was made of, for the heads of reports. */
public final class Commit {
    private Commit() {}

    /** The commit as git tells it; "-dirty" where something was changed since, "unknown" without git. */
    public static String described() throws IOException, InterruptedException {
        Process git = new ProcessBuilder("git", "describe", "--always", "--dirty", "--exclude=*")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(git.getInputStream(), StandardCharsets.UTF_8))) {
            String commit = said.readLine();
            return git.waitFor() == 0 && commit != null ? commit : "unknown";
        }
    }
}
