package strawbed.report.pdf;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strawbed.report.Mark;
import strawbed.report.Timeline;

/**
 * Marks of one kind so close together that they share one sign.
 *
 * @param centre where the sign stands, in millimetres from the start of the axis
 * @param marks in the order of time; never empty
 */
record Cluster(double centre, List<Mark> marks) {
    private static final double LEAST_DISTANCE = Measures.MARK + 0.5;

    Cluster {
        marks = List.copyOf(marks);
    }

    /** The marks gathered along an axis of that length; no two signs touch. */
    static List<Cluster> along(List<Mark> marks, double axis) {
        List<Cluster> clusters = new ArrayList<>();
        for (Mark mark :
                marks.stream().sorted(Comparator.comparing(Mark::afterStart)).toList()) {
            double centre = Math.max(0, Math.min(1, hours(mark) / hours(Timeline.LENGTH))) * axis;
            if (clusters.isEmpty()) {
                clusters.add(new Cluster(centre, List.of(mark)));
                continue;
            }
            Cluster last = clusters.get(clusters.size() - 1);
            double free = last.centre() + LEAST_DISTANCE;
            if (centre >= free || (mark.done() != last.done() && free <= axis)) {
                clusters.add(new Cluster(Math.max(centre, free), List.of(mark)));
            } else {
                clusters.set(clusters.size() - 1, last.with(mark));
            }
        }
        return clusters;
    }

    /** Whether all of it was done. */
    boolean done() {
        return marks.stream().allMatch(Mark::done);
    }

    /** Whether some of it lies before the axis. */
    boolean early() {
        return marks.get(0).afterStart().isNegative();
    }

    /** Whether some of it lies after the axis. */
    boolean late() {
        return marks.get(marks.size() - 1).afterStart().compareTo(Timeline.LENGTH) > 0;
    }

    /** The words beside the sign, from the fullest to the shortest. */
    List<String> captions() {
        Mark first = marks.get(0);
        String times = marks.size() == 1 ? "" : "×" + marks.size();
        return List.of((first.clock() + " " + times + " " + first.label()), first.clock() + " " + times, times);
    }

    private Cluster with(Mark mark) {
        List<Mark> longer = new ArrayList<>(marks);
        longer.add(mark);
        return new Cluster(centre, longer);
    }

    private static double hours(Mark mark) {
        return hours(mark.afterStart());
    }

    private static double hours(Duration duration) {
        return duration.toSeconds() / (double) Duration.ofHours(1).toSeconds();
    }
}
