package strawbed.report;

/**
 * One thing still to do, ticked off by pen.
 *
 * @param what the task, such as "Second feed"; never blank
 * @param when the clock time, such as "by 14:02"; may be blank when there is none
 */
public record ToDo(String what, String when) {
    public ToDo {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a task on a card needs words; its time is \"" + when + "\"");
        }
    }
}
