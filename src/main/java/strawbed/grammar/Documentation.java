package strawbed.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The documentation comment before a rule (SRGS 1.0, section 3.3): a text, then tagged paragraphs as in Java.
 *
 * <p>The standard knows the tag {@code @example}, a sentence that the rule must match. Other tags are kept as they are:
 * they are for whoever prints or edits the grammar, and say nothing about what may be said.
 *
 * @param text what stands before the first tag; empty when there is no comment
 * @param tags in the order written
 */
public record Documentation(String text, List<Tag> tags) {

    /** Of a rule without a documentation comment. */
    public static final Documentation NONE = new Documentation("", List.of());

    /** Keeps its own copy of the tags. */
    public Documentation {
        Objects.requireNonNull(text, "text");
        tags = List.copyOf(tags);
    }

    /**
     * A tagged paragraph.
     *
     * @param name without the {@code @}
     * @param text its words, one blank between them; may be empty
     * @param position where its line begins
     */
    public record Tag(String name, String text, SourcePosition position) {

        /** Refuses missing parts. */
        public Tag {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(position, "position");
        }
    }

    /** The tags with this name, in the order written. */
    public List<Tag> tags(String name) {
        return tags.stream().filter(tag -> tag.name().equals(name)).toList();
    }

    /**
     * Reads what stands between the opening and the closing mark of a comment.
     *
     * @param at where that begins in the source
     */
    static Documentation parse(SourceText source, int at, String comment) {
        StringBuilder text = new StringBuilder();
        List<Tag> tags = new ArrayList<>();
        int lineAt = at;
        for (String line : comment.split("\n", -1)) {
            String words = line.strip().replaceFirst("^\\*+", "").strip().replaceAll("\\s+", " ");
            if (words.startsWith("@")) {
                String[] parts = words.substring(1).split(" ", 2);
                tags.add(new Tag(parts[0], parts.length > 1 ? parts[1] : "", source.position(lineAt)));
            } else if (tags.isEmpty()) {
                text.append(' ').append(words);
            } else {
                Tag last = tags.remove(tags.size() - 1);
                tags.add(new Tag(last.name(), (last.text() + " " + words).strip(), last.position()));
            }
            lineAt += line.length() + 1;
        }
        return new Documentation(text.toString().strip().replaceAll(" +", " "), tags);
    }
}
