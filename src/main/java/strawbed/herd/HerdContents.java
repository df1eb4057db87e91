package strawbed.herd;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.care.HerdReport;
import strawbed.protocol.Units;
import strawbed.report.Chapter;
import strawbed.report.Exhibit;
import strawbed.report.HerdPaper;
import strawbed.text.Figures;
import strawbed.text.HerdReportPhrases;
import strawbed.text.Messages;

/** Makes the document of the herd's report. Safe for any thread. */
public final class HerdContents {
    private final HerdReport report;
    private final Optional<HerdReport> before;
    private final Wordings words;

    private HerdContents(HerdReport report, Optional<HerdReport> before, Wordings words) {
        this.report = report;
        this.before = before;
        this.words = words;
    }

    /**
     * The document of a report.
     *
     * @param before the period before, to compare with
     * @param unconfirmed how many statements of the period nobody confirmed
     * @param zone the farm's
     * @param farmName its name; may be blank
     */
    public static HerdPaper of(
            HerdReport report,
            Optional<HerdReport> before,
            int unconfirmed,
            Instant now,
            Messages messages,
            ZoneId zone,
            String farmName) {
        Wordings words = new Wordings(
                messages,
                Figures.written(messages, zone, Units.AS_SPOKEN),
                new HerdReportPhrases(messages, zone),
                zone);
        return new HerdContents(report, before.filter(then -> then.born() > 0), words)
                .paper(unconfirmed, now, messages.locale().toLanguageTag(), farmName);
    }

    private HerdPaper paper(int unconfirmed, Instant now, String language, String farmName) {
        return new HerdPaper(
                words.text(HERD_PAPER_TITLE),
                farmName,
                period(),
                words.text(HERD_PAPER_PRINTED, words.figures().dayAndClock(now)),
                (page, pages) -> words.text(HERD_PAPER_PAGE, words.number(page), words.number(pages)),
                chapters(unconfirmed),
                language);
    }

    private String period() {
        HerdReport.Days days = report.days();
        return days.first().equals(days.last())
                ? words.text(HERD_PAPER_PERIOD_ONE_DAY, days.first().toString())
                : words.text(
                        HERD_PAPER_PERIOD, days.first().toString(), days.last().toString());
    }

    private List<Chapter> chapters(int unconfirmed) {
        FigureRows rows = new FigureRows(words, report, before);
        List<Chapter> chapters = new ArrayList<>();
        if (report.born() == 0) {
            chapters.add(new Chapter(
                    words.text(HERD_PAPER_GLANCE, words.number(0)),
                    List.of(lines(List.of(words.text(HERD_REPORT_NONE))))));
            chapters.add(data(rows, unconfirmed));
            return chapters;
        }
        chapters.add(new Chapter(glance(), List.of(rows.births())));
        chapters.add(new Chapter(words.text(HERD_PAPER_COLOSTRUM), List.of(rows.colostrum())));
        chapters.add(new Chapter(words.text(HERD_PAPER_NAVEL), List.of(rows.navel())));
        chapters.add(new Chapter(words.text(HERD_IMMUNITY), rows.immunity()));
        chapters.add(new Chapter(words.text(HERD_PAPER_LIE), orNone(new Pictures(words, report).all())));
        chapters.add(new Chapter(words.text(HERD_PAPER_WEEKS), weeks()));
        chapters.add(new Chapter(words.text(HERD_PAPER_BESIDE), beside()));
        chapters.add(data(rows, unconfirmed));
        chapters.add(new Chapter(words.text(HERD_PAPER_METHODS), List.of(lines(methods()))));
        return chapters;
    }

    private List<String> methods() {
        List<String> methods = new ArrayList<>(words.phrases().notes());
        methods.add(words.text(HERD_PAPER_METHODS_PUBLISHED));
        return methods;
    }

    private List<Exhibit> beside() {
        List<Exhibit> beside = new ArrayList<>(List.of(lines(List.of(words.text(HERD_PAPER_BESIDE_LEGEND)))));
        beside.addAll(new Parts(words, report).all());
        return beside;
    }

    private String glance() {
        return report.born() == 1
                ? words.text(HERD_PAPER_GLANCE_ONE)
                : words.text(HERD_PAPER_GLANCE, words.number(report.born()));
    }

    private List<Exhibit> weeks() {
        List<Exhibit> weeks = new WeekPictures(words, report).all();
        if (weeks.isEmpty()) {
            return List.of(lines(List.of(words.text(HERD_PAPER_WEEKS_NONE))));
        }
        List<Exhibit> all = new ArrayList<>(List.of(lines(List.of(words.text(HERD_PAPER_WEEKS_LEGEND)))));
        all.addAll(weeks);
        return all;
    }

    private Chapter data(FigureRows rows, int unconfirmed) {
        Exhibit open = lines(List.of(words.text(HERD_PAPER_UNCONFIRMED, words.number(unconfirmed))));
        return new Chapter(
                words.text(HERD_PAPER_DATA), report.born() == 0 ? List.of(open) : List.of(rows.known(), open));
    }

    private List<Exhibit> orNone(List<Exhibit> pictures) {
        return pictures.isEmpty() ? List.of(lines(List.of(words.text(HERD_PAPER_NONE_CHARTED)))) : pictures;
    }

    private static Exhibit lines(List<String> lines) {
        return new Exhibit.Lines(lines);
    }
}
