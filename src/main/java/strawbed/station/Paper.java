package strawbed.station;

/**
 * A page on its way to the printer.
 *
 * @param number of its job
 * @param what in words, such as "the card of calf 12"
 * @param printer its name
 * @param why it waits, in a sentence; empty if it does not
 */
public record Paper(int number, String what, String printer, PaperState state, String why) {}
