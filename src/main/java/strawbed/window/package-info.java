/**
 * The station's window. Only this room knows Swing. It paints a {@link strawbed.station.Screen} and tells which key was
 * pressed; it decides nothing.
 *
 * <p>Every length is given in units: one unit is a millimetre on the smallest screen that is meant (218 by 136 mm), and
 * more on a larger one. All of it belongs to the event thread of AWT.
 */
@NullMarked
package strawbed.window;

import org.jspecify.annotations.NullMarked;
