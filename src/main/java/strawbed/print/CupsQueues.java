package strawbed.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which queues of CUPS are paused, and which take no jobs, from its program lpstat: Java is not told the first, and
 * believes for ever what it learned of the second once. It is started with fixed words only: no name reaches it.
 *
 * @param paused with the reason of each, which may be blank
 * @param closed those that take no jobs
 */
record CupsQueues(Map<String, String> paused, Set<String> closed) {
    private static final CupsQueues NOTHING_KNOWN = new CupsQueues(Map.of(), Set.of());
    private static final long PATIENCE_SECONDS = 5;
    private static final Pattern PAUSED = Pattern.compile("printer (\\S+) disabled since .*");
    private static final Pattern CLOSED = Pattern.compile("(\\S+) not accepting requests since .*");
    private static final String NO_REASON = "reason unknown";

    /** Nothing also where there is no lpstat, or it does not answer: then a page is handed over, and CUPS keeps it. */
    static CupsQueues now() {
        ProcessBuilder command = new ProcessBuilder("lpstat", "-p", "-a").redirectErrorStream(true);
        // Else it speaks the user's language.
        command.environment().put("LC_ALL", "C");
        Process lpstat;
        try {
            lpstat = command.start();
        } catch (IOException notInstalled) {
            return NOTHING_KNOWN;
        }
        try {
            if (!lpstat.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                return NOTHING_KNOWN;
            }
            return in(new String(lpstat.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException unreadable) {
            return NOTHING_KNOWN;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return NOTHING_KNOWN;
        } finally {
            lpstat.destroyForcibly();
        }
    }

    /** The reason of a pause stands in the line below. */
    static CupsQueues in(List<String> lines) {
        Map<String, String> paused = new LinkedHashMap<>();
        Set<String> closed = new LinkedHashSet<>();
        for (int i = 0; i < lines.size(); i++) {
            Matcher pause = PAUSED.matcher(lines.get(i));
            Matcher refusal = CLOSED.matcher(lines.get(i));
            if (pause.matches()) {
                boolean hasReason = i + 1 < lines.size() && lines.get(i + 1).startsWith("\t");
                String reason = hasReason ? lines.get(i + 1).strip() : "";
                paused.put(pause.group(1), reason.equals(NO_REASON) ? "" : reason);
            } else if (refusal.matches()) {
                closed.add(refusal.group(1));
            }
        }
        return new CupsQueues(paused, closed);
    }
}
