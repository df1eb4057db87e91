package strawbed.herd;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import strawbed.care.Figure;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Group;
import strawbed.care.HerdReport.Grouping;
import strawbed.report.Exhibit;

/** Weekdays, shifts and dams held against each other by what the work of a shift can change. */
final class Parts {
    private static final List<Grouping> SHOWN = List.of(Grouping.SHIFT, Grouping.WEEKDAY, Grouping.DAM);
    private static final List<HerdMeasure> MEASURES =
            List.of(HerdMeasure.FED_WITHIN_4_HOURS, HerdMeasure.DIPPED_IN_TIME, HerdMeasure.GOOD_BRIX);

    private final Wordings words;
    private final HerdReport report;

    Parts(Wordings words, HerdReport report) {
        this.words = words;
        this.report = report;
    }

    List<Exhibit> all() {
        return SHOWN.stream().map(this::comparison).toList();
    }

    private Exhibit comparison(Grouping grouping) {
        String title = words.messages().word(grouping);
        List<String> columns = new ArrayList<>(List.of(title, words.text(HERD_PAPER_SIZE)));
        MEASURES.forEach(measure -> columns.add(words.messages().word(measure)));
        return new Exhibit.Comparison(
                title,
                columns,
                Objects.requireNonNull(report.groups().get(grouping)).stream()
                        .map(this::row)
                        .toList());
    }

    private Exhibit.ComparisonRow row(Group group) {
        return new Exhibit.ComparisonRow(
                words.phrases().name(group.key()),
                words.number(group.born()),
                MEASURES.stream()
                        .map(measure ->
                                cell(Objects.requireNonNull(group.figures().get(measure))))
                        .toList());
    }

    private Exhibit.Cell cell(Figure figure) {
        return new Exhibit.Cell(words.share(figure), words.range(figure, Optional.empty(), Optional.empty()));
    }
}
