package strawbed.station;

/**
 * One thing that is due.
 *
 * @param calf how the calf is called, in few letters
 * @param what the task
 * @param when how it stands, such as "LATE by 35 min"
 * @param pressing whether it must be done now
 */
public record DueRow(String calf, String what, String when, boolean pressing) {}
