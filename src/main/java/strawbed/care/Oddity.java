package strawbed.care;

import java.math.BigDecimal;

/**
 * A figure out of the ordinary. It is a reason to ask again, never to refuse.
 *
 * @param quantity our key for what was measured, such as {@code colostrum brix}
 * @param value the figure in {@code unit}
 * @param unit our key for the unit, such as {@code C} or {@code kg}
 * @param low the least ordinary figure
 * @param high the greatest ordinary figure
 * @param source where the range comes from, in words
 */
public record Oddity(String quantity, BigDecimal value, String unit, BigDecimal low, BigDecimal high, String source) {}
