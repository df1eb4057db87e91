package strawbed.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import strawbed.report.Chapter;
import strawbed.report.Exhibit;
import strawbed.report.Exhibit.Cell;
import strawbed.report.Exhibit.Comparison;
import strawbed.report.Exhibit.ComparisonRow;
import strawbed.report.Exhibit.FigureRow;
import strawbed.report.Exhibit.Graph;
import strawbed.report.HerdPaper;
import strawbed.report.Markup;
import strawbed.report.pdf.SvgWriter;

/**
 * Writes the herd's report as one page for a browser, type and pictures in it, so that it opens without a network. It
 * holds no script. One writer may be used by any number of threads.
 */
public final class HtmlHerdWriter {
    private static final double RANGE_WIDTH = 88;
    private static final double CELL_WIDTH = 30;
    private static final double GRAPH_WIDTH = 88;

    /** The page; the same report gives the same text. */
    public String write(HerdPaper report) {
        try (SvgWriter svg = new SvgWriter()) {
            StringBuilder page = new StringBuilder();
            page.append("<!DOCTYPE html>\n<html lang=\"")
                    .append(Markup.escaped(report.language()))
                    .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                    .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                    .append(Markup.escaped(report.title() + ", " + report.period()))
                    .append("</title>\n<style>\n")
                    .append(font("AtkinsonHyperlegibleNext_400Regular", "400"))
                    .append(font("AtkinsonHyperlegibleNext_700Bold", "700"))
                    .append(text("/strawbed/report/html/herd.css"))
                    .append("</style>\n</head>\n<body>\n<header>\n")
                    .append(element("h1", report.title()))
                    .append(report.farm().isBlank() ? "" : element("p class=\"farm\"", report.farm()))
                    .append(element("p class=\"period\"", report.period()))
                    .append(element("p", report.printedAt()))
                    .append("</header>\n<main>\n");
            report.chapters().forEach(chapter -> page.append(chapter(chapter, svg)));
            return page.append("</main>\n</body>\n</html>\n").toString();
        }
    }

    private static String chapter(Chapter chapter, SvgWriter svg) {
        StringBuilder html = new StringBuilder("<section>\n" + element("h2", chapter.title()));
        boolean isAmongGraphs = false;
        for (Exhibit exhibit : chapter.exhibits()) {
            boolean isGraph = exhibit instanceof Graph;
            if (isGraph != isAmongGraphs) {
                html.append(isGraph ? "<div class=\"graphs\">\n" : "</div>\n");
                isAmongGraphs = isGraph;
            }
            html.append(exhibit(exhibit, svg));
        }
        return html.append(isAmongGraphs ? "</div>\n</section>\n" : "</section>\n")
                .toString();
    }

    private static String exhibit(Exhibit exhibit, SvgWriter svg) {
        if (exhibit instanceof Exhibit.Figures figures) {
            return figures(figures, svg);
        }
        if (exhibit instanceof Graph graph) {
            return "<figure>\n" + element("h3", graph.title()) + svg.chart(graph.chart(), GRAPH_WIDTH) + "\n"
                    + element("figcaption", graph.caption()) + "</figure>\n";
        }
        if (exhibit instanceof Comparison comparison) {
            return comparison(comparison, svg);
        }
        return paragraphs(((Exhibit.Lines) exhibit).lines());
    }

    private static String figures(Exhibit.Figures figures, SvgWriter svg) {
        StringBuilder html = new StringBuilder(figures.legend().isBlank() ? "" : element("p", figures.legend()));
        html.append("<dl class=\"figures\">\n");
        for (FigureRow row : figures.rows()) {
            html.append("<div>\n")
                    .append(element("dt", row.label()))
                    .append(element("dd class=\"value\"", row.value()))
                    .append("<dd class=\"range\">")
                    .append(row.range()
                            .map(range -> svg.range(range, RANGE_WIDTH))
                            .orElse(""))
                    .append("</dd>\n<dd class=\"meaning\"><strong>")
                    .append(Markup.escaped(row.counts()))
                    .append("</strong> ")
                    .append(Markup.escaped((row.definition() + " " + row.benchmark()).strip()))
                    .append("</dd>\n</div>\n");
        }
        return html.append("</dl>\n").toString();
    }

    private static String comparison(Comparison comparison, SvgWriter svg) {
        StringBuilder html = new StringBuilder("<table>\n" + element("caption", comparison.title()) + "<thead><tr>\n");
        comparison.columns().forEach(column -> html.append(element("th scope=\"col\"", column)));
        html.append("</tr></thead>\n<tbody>\n");
        for (ComparisonRow row : comparison.rows()) {
            html.append("<tr>\n")
                    .append(element("th scope=\"row\"", row.name()))
                    .append(element("td class=\"number\"", row.size()));
            for (Cell cell : row.cells()) {
                html.append("<td><span class=\"number\">")
                        .append(Markup.escaped(cell.text()))
                        .append("</span>")
                        .append(cell.range()
                                .map(range -> svg.range(range, CELL_WIDTH))
                                .orElse(""))
                        .append("</td>\n");
            }
            html.append("</tr>\n");
        }
        return html.append("</tbody>\n</table>\n").toString();
    }

    private static String paragraphs(List<String> lines) {
        StringBuilder html = new StringBuilder();
        lines.forEach(line -> html.append(element("p", line)));
        return html.toString();
    }

    /** @param tag with its attributes, which are ours */
    private static String element(String tag, String text) {
        String name = tag.split(" ", 2)[0];
        return "<" + tag + ">" + Markup.escaped(text) + "</" + name + ">\n";
    }

    private static String font(String name, String weight) {
        return "@font-face { font-family: " + SvgWriter.FAMILY + "; font-weight: " + weight
                + "; src: url(data:font/ttf;base64,"
                + Base64.getEncoder().encodeToString(bytes("/fonts/" + name + ".ttf")) + "); }\n";
    }

    private static String text(String resource) {
        return new String(bytes(resource), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = HtmlHerdWriter.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the program; install Strawbed again.");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
