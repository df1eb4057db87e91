package strawbed.report;

/** The words that tell a page's place, such as "page 1 of 2": how many pages there are is known only when all are laid out. */
@FunctionalInterface
public interface PageWords {
    String of(int page, int pages);
}
