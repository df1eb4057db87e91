package strawbed.report.pdf;

/** How strongly words are printed. */
enum Weight {
    REGULAR,
    BOLD
}
