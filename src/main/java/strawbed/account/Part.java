package strawbed.account;

import java.util.List;

/** The lines that belong under one heading. */
public record Part(String title, List<Line> lines) {
    public Part {
        lines = List.copyOf(lines);
    }
}
