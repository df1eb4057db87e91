package strawbed.report.pdf;

import strawbed.report.PageWords;

/** The words of the head that every page of a sheet bears. */
record Heading(String title, String farm, String period, String printedAt, PageWords page) {}
