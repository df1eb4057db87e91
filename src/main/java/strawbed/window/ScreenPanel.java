package strawbed.window;

import java.awt.Component;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import strawbed.station.Act;
import strawbed.station.Body;
import strawbed.station.Key;
import strawbed.station.Rank;
import strawbed.station.Screen;

/** Lays a screen out and paints it. Works without a window as well, for pictures. */
public final class ScreenPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient Consumer<Act> acts;
    private final transient Typeface face = Typeface.load();
    private transient Palette colours = Palette.LIGHT;
    private double dotsPerInch;
    private double level = SignStrip.QUIETEST;
    private transient @Nullable Screen screen;
    private boolean keysAreHeard = true;
    private String unheardKeysNote = "";
    private String smallScreenNote = "";
    private transient @Nullable Units laidOutWith;
    private transient @Nullable Palette laidOutIn;
    private transient @Nullable SignStrip strip;
    private transient List<BigKey> foot = List.of();
    private transient List<BigKey> choices = List.of();
    private transient @Nullable Part middle;

    /**
     * @param acts is told what a pressed key asks for
     * @param dotsPerInch of the screen
     */
    public ScreenPanel(Consumer<Act> acts, double dotsPerInch) {
        super(null);
        this.acts = acts;
        this.dotsPerInch = dotsPerInch;
        setBackground(colours.paper());
    }

    /** Light letters on dark, for the night. */
    public void dark(boolean isDark) {
        Palette wanted = isDark ? Palette.DARK : Palette.LIGHT;
        if (!wanted.equals(colours)) {
            colours = wanted;
            setBackground(colours.paper());
            build();
        }
    }

    /** The screen was measured. */
    public void dotsPerInch(double measured) {
        if (measured != dotsPerInch) {
            dotsPerInch = measured;
            build();
        }
    }

    /** Whether the window gets what keyboard and pedal send; a band tells when it does not. */
    public void heardKeys(boolean areHeard) {
        if (keysAreHeard != areHeard) {
            keysAreHeard = areHeard;
            build();
        }
    }

    /** What the band says then, and where the screen is smaller than gloves need. */
    public void notes(String unheardKeys, String smallScreen) {
        unheardKeysNote = unheardKeys;
        smallScreenNote = smallScreen;
    }

    /** Shows a screen. Keys that stay the same stay the same, so that a press in progress is not lost. */
    public void show(Screen next) {
        Screen before = screen;
        if (next.equals(before)) {
            return;
        }
        screen = next;
        build();
    }

    /** Shows how loud it is, in dB of full scale. */
    public void level(double decibel) {
        level = decibel;
        if (strip != null) {
            strip.level(decibel);
        }
    }

    @Override
    public void doLayout() {
        Units units = units();
        if (screen != null && !units.equals(laidOutWith)) {
            build();
        }
        place();
    }

    /** How long things are on this screen. */
    public Units units() {
        return Units.of(Math.max(1, getWidth()), Math.max(1, getHeight()), dotsPerInch);
    }

    private void build() {
        // Without a size yet, it is built when it is laid out.
        if (screen == null || getWidth() == 0) {
            return;
        }
        Units units = units();
        Paint paint = new Paint(face, colours, units, getHeight() > getWidth());
        boolean same = units.equals(laidOutWith) && colours.equals(laidOutIn);
        foot = keys(screen.keys(), same ? foot : List.of(), paint);
        choices = screen.body() instanceof Body.Choices body
                ? keys(body.keys(), same ? choices : List.of(), paint)
                : List.of();
        laidOutWith = units;
        laidOutIn = colours;
        strip = new SignStrip(screen, paint);
        strip.level(level);
        middle = middle(screen.body(), paint);
        List<Component> wanted = new ArrayList<>(List.of(strip));
        // A page for work from near needs its room for keys; its note stands beside the heading.
        String note = note(screen, units);
        if (!note.isEmpty() && (!screen.isNear() || !keysAreHeard)) {
            wanted.add(new NoteBand(note, paint));
        }
        if (middle != null) {
            wanted.add(middle);
        }
        wanted.addAll(choices);
        wanted.addAll(foot);
        exchange(wanted);
        place();
        repaint();
    }

    /** What stays is not taken out: it would lose the focus, and a press that is going on. */
    private void exchange(List<Component> wanted) {
        for (Component before : getComponents()) {
            if (!wanted.contains(before)) {
                remove(before);
            }
        }
        wanted.stream().filter(part -> part.getParent() == null).forEach(this::add);
    }

    private String note(Screen shown, Units units) {
        if (!keysAreHeard) {
            return unheardKeysNote;
        }
        return shown.note().isEmpty() && units.isTooSmall() && !shown.isNear() ? smallScreenNote : shown.note();
    }

    private static @Nullable Part middle(Body body, Paint paint) {
        if (body instanceof Body.Telling telling) {
            return new TellingPart(telling, paint);
        }
        if (body instanceof Body.Ready ready) {
            return new ReadyPart(ready, paint);
        }
        if (body instanceof Body.OneCalf calf) {
            return new CalfPart(calf, paint);
        }
        if (body instanceof Body.Lines lines) {
            return new LinesPart(lines, paint);
        }
        return body instanceof Body.Ruler ruler ? new RulerPart(ruler, paint) : null;
    }

    private List<BigKey> keys(List<Key> wanted, List<BigKey> before, Paint paint) {
        if (before.stream().map(BigKey::key).toList().equals(wanted)) {
            return before;
        }
        return wanted.stream().map(key -> key(key, paint)).toList();
    }

    private BigKey key(Key key, Paint paint) {
        boolean isAnswer = key.rank() == Rank.YES || key.rank() == Rank.NO;
        boolean isFar = screen != null && !screen.isNear();
        BigKey made = new BigKey(key, paint, isAnswer && isFar ? Measures.FAR_CAPITALS : Measures.NEAR_CAPITALS);
        if (key.act() instanceof Act.Talk) {
            // Held, not pressed: it counts from going down to coming up, wherever the finger slides to.
            made.getModel().addChangeListener(new Holding(made.getModel(), acts));
        } else {
            made.addActionListener(pressed -> acts.accept(key.act()));
        }
        return made;
    }

    private void place() {
        if (screen == null || laidOutWith == null || strip == null) {
            return;
        }
        Units units = laidOutWith;
        boolean upright = getHeight() > getWidth();
        int edge = units.px(Measures.EDGE);
        int between = units.px(Measures.BETWEEN);
        double low = screen.isNear() ? Measures.NEAR_STRIP : Measures.FAR_STRIP;
        int stripHeight = units.px(upright ? low * 2 : low);
        strip.setBounds(0, 0, getWidth(), stripHeight);
        int top = stripHeight;
        for (NoteBand note : parts(NoteBand.class)) {
            note.setBounds(0, top, getWidth(), units.px(NoteBand.HEIGHT));
            top += units.px(NoteBand.HEIGHT);
        }
        top += screen.isNear() ? edge : between;
        int bottom = placeFoot(getHeight() - edge, units) - (screen.isNear() ? units.px(Measures.GAP) : between);
        Rectangle area = new Rectangle(edge, top, getWidth() - 2 * edge, Math.max(1, bottom - top));
        if (middle != null) {
            middle.setBounds(area);
        }
        List<Rectangle> places = KeyGrid.places(choices.size(), area, units);
        for (int i = 0; i < choices.size(); i++) {
            choices.get(i).setBounds(places.get(i));
        }
    }

    /** In one row, or where that is too narrow in several, the last one lowest; gives the upper edge. */
    private int placeFoot(int bottom, Units units) {
        int edge = units.px(Measures.EDGE);
        int width = getWidth() - 2 * edge;
        List<List<BigKey>> rows = new ArrayList<>();
        for (BigKey key : foot) {
            List<BigKey> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
            List<BigKey> longer = Stream.concat(last.stream(), Stream.of(key)).toList();
            if (!rows.isEmpty() && (getWidth() > getHeight() || KeyGrid.wanted(longer, units) <= width)) {
                rows.set(rows.size() - 1, longer);
            } else {
                rows.add(List.of(key));
            }
        }
        int top = bottom;
        for (int i = rows.size() - 1; i >= 0; i--) {
            boolean isMain = screen != null
                    && !screen.isNear()
                    && (getWidth() > getHeight()
                            || rows.get(i).stream().anyMatch(key -> key.key().rank() == Rank.YES));
            int height = units.px(isMain ? Measures.MAIN_KEY : Measures.KEY);
            top -= height;
            List<Rectangle> places = KeyGrid.row(rows.get(i), new Rectangle(edge, top, width, height), units);
            for (int k = 0; k < places.size(); k++) {
                rows.get(i).get(k).setBounds(places.get(k));
            }
            top -= i == 0 ? 0 : units.px(Measures.GAP);
        }
        return top;
    }

    private <T> List<T> parts(Class<T> kind) {
        return Stream.of(getComponents())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** All keys, from the upper left to the lower right. */
    public List<JComponent> keys() {
        return Stream.concat(choices.stream(), foot.stream())
                .map(key -> (JComponent) key)
                .toList();
    }

    /** How high the capitals are, in dots, of all that is to be read from two metres; for tests. */
    public List<Double> farCapitals() {
        List<Double> capitals = new ArrayList<>();
        parts(Part.class).forEach(part -> capitals.addAll(part.farCapitals()));
        foot.stream()
                .filter(key -> key.capitals() >= Measures.FAR_CAPITALS)
                .forEach(key -> capitals.add(key.label().capitals()));
        return capitals;
    }

    /** How many of the things that are due have room; for tests. */
    public int dueRows() {
        return parts(ReadyPart.class).stream().mapToInt(ReadyPart::rows).sum();
    }

    /** What does not have room, by what it says; for tests. */
    public List<String> tooLong() {
        List<String> tooLong = new ArrayList<>();
        Stream.concat(choices.stream(), foot.stream())
                .filter(key -> !key.label().fits()
                        || !(key.key().detail().isEmpty() || key.detail().fits()))
                .forEach(key -> tooLong.add(key.key().spoken()));
        parts(Part.class).stream()
                .filter(part -> !part.fits())
                .forEach(part -> tooLong.add(part.getAccessibleContext().getAccessibleName()));
        return tooLong;
    }
}
