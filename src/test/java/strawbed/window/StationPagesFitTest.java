package strawbed.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.station.Rank;
import strawbed.station.Screen;
import strawbed.station.StationPages;
import strawbed.text.Language;

/** Every page on screens of several sizes: all that is written has room, and keys are as large as gloves need. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationPagesFitTest {
    /**
     * Screens as they are sold, with what their dots measure: a 10.1 inch tablet either way up, a 15.6 inch panel, and an
     * old monitor of 17 inches. What has room depends on the shape alone.
     */
    private enum Size {
        TABLET(1280, 800, 149),
        TABLET_UPRIGHT(800, 1280, 149),
        PANEL(1920, 1080, 141),
        OLD_MONITOR(1280, 1024, 96);

        private final int width;
        private final int height;
        private final double dotsPerInch;

        Size(int width, int height, double dotsPerInch) {
            this.width = width;
            this.height = height;
            this.dotsPerInch = dotsPerInch;
        }
    }

    private static ScreenPanel panel(Size size, Screen screen, boolean dark) {
        ScreenPanel panel = new ScreenPanel(act -> {}, size.dotsPerInch);
        panel.setSize(size.width, size.height);
        panel.dark(dark);
        panel.show(screen);
        panel.doLayout();
        panel.level(-22);
        return panel;
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everything_that_is_written_has_room(Language language) {
        Map<String, Screen> pages = StationPages.all(language);
        assertThat(pages).hasSizeGreaterThan(80);
        Map<String, List<String>> tooLong = new LinkedHashMap<>();
        pages.forEach((name, screen) -> {
            for (Size size : Size.values()) {
                List<String> here = panel(size, screen, false).tooLong();
                if (!here.isEmpty()) {
                    tooLong.put(size + ", " + name, here);
                }
            }
        });
        assertThat(tooLong).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void what_is_due_is_seen_beside_what_was_saved(Language language) {
        Screen now = Objects.requireNonNull(StationPages.all(language).get("now"));
        for (Size size : Size.values()) {
            assertThat(panel(size, now, false).dueRows())
                    .as(language + ", " + size)
                    .isGreaterThanOrEqualTo(2);
        }
    }

    /** F-01 to F-03: Duff 2010; MIL-STD-1472E; 25 and 40 mm for gloves: common practice, no published source. */
    @ParameterizedTest
    @EnumSource(Size.class)
    void keys_are_as_large_and_as_far_apart_as_gloves_need(Size size) {
        StationPages.all(Language.ENGLISH).forEach((name, screen) -> {
            ScreenPanel panel = panel(size, screen, false);
            Units units = panel.units();
            List<JComponent> keys = panel.keys();
            for (JComponent key : keys) {
                String what = size + ", " + name + ", " + ((BigKey) key).key().label();
                assertThat(units.millimetres(key.getWidth())).as(what).isGreaterThanOrEqualTo(least(units, 25));
                assertThat(units.millimetres(key.getHeight())).as(what).isGreaterThanOrEqualTo(least(units, 25));
                if (((BigKey) key).key().rank() == Rank.YES && !screen.isNear()) {
                    assertThat(units.millimetres(key.getHeight())).as(what).isGreaterThanOrEqualTo(least(units, 40));
                    assertThat(units.millimetres(key.getWidth())).as(what).isGreaterThanOrEqualTo(least(units, 40));
                }
                assertThat(panel.getBounds())
                        .as(what)
                        .satisfies(
                                all -> assertThat(new Rectangle(0, 0, all.width, all.height).contains(key.getBounds()))
                                        .isTrue());
            }
            for (int i = 0; i < keys.size(); i++) {
                for (int j = i + 1; j < keys.size(); j++) {
                    double apart = apart(keys.get(i).getBounds(), keys.get(j).getBounds());
                    boolean answers = ranks(keys.get(i), keys.get(j)).containsAll(List.of(Rank.YES, Rank.NO));
                    assertThat(units.millimetres(apart))
                            .as(size + ", " + name + ", " + i + " and " + j)
                            .isGreaterThanOrEqualTo(least(units, answers && !screen.isNear() ? 13 : 6));
                }
            }
        });
    }

    /** A screen that is less high than is meant has smaller keys by as much, and a note; dots are whole. */
    private static double least(Units units, double millimetres) {
        double share = Math.min(1, units.dots() / units.dotsPerMillimetre());
        return millimetres * share - units.millimetres(1.01);
    }

    private static List<Rank> ranks(JComponent one, JComponent other) {
        return List.of(((BigKey) one).key().rank(), ((BigKey) other).key().rank());
    }

    private static double apart(Rectangle one, Rectangle other) {
        double across = Math.max(one.x - other.getMaxX(), other.x - one.getMaxX());
        double down = Math.max(one.y - other.getMaxY(), other.y - one.getMaxY());
        return Math.max(across, down);
    }

    /** F-06: 30 arc minutes at two metres are 17.45 mm; common practice, no published source. */
    @ParameterizedTest
    @EnumSource(
            value = Size.class,
            names = {"TABLET", "PANEL", "OLD_MONITOR"})
    void what_is_read_from_two_metres_is_large_enough(Size size) {
        for (Language language : Language.values()) {
            StationPages.all(language).forEach((name, screen) -> {
                if (screen.isNear()) {
                    return;
                }
                ScreenPanel panel = panel(size, screen, false);
                List<Double> capitals = new ArrayList<>();
                panel.farCapitals().forEach(height -> capitals.add(panel.units().millimetres(height)));
                assertThat(capitals).as(language + ", " + size + ", " + name).isNotEmpty();
                assertThat(capitals)
                        .as(language + ", " + size + ", " + name)
                        .allSatisfy(height -> assertThat(height).isGreaterThanOrEqualTo(17.4));
            });
        }
    }

    /** WCAG 2.2, success criterion 1.4.6, with its formula for relative luminance. */
    @Test
    void every_pair_of_colours_has_a_contrast_of_seven_to_one() {
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            List<Palette.Pair> pairs = new ArrayList<>(List.of(
                    new Palette.Pair(palette.paper(), palette.ink()),
                    new Palette.Pair(palette.strip(), palette.onStrip()),
                    palette.deaf()));
            for (Rank rank : Rank.values()) {
                pairs.add(palette.of(rank));
            }
            assertThat(pairs)
                    .allSatisfy(pair -> assertThat(contrast(pair.on(), pair.ink()))
                            .as(pair.toString())
                            .isGreaterThanOrEqualTo(7));
        }
    }

    /** The worked examples of the formula: black on white 21, #767676 on white 4.54, both of WCAG's documents. */
    @Test
    void contrast_is_reckoned_as_published() {
        assertThat(contrast(Color.WHITE, Color.BLACK)).isBetween(20.99, 21.01);
        assertThat(contrast(Color.WHITE, new Color(0x767676))).isBetween(4.53, 4.55);
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * channel(colour.getRed())
                + 0.7152 * channel(colour.getGreen())
                + 0.0722 * channel(colour.getBlue());
    }

    private static double channel(int value) {
        double share = value / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** To be looked at: {@code target/station}. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void pictures_of_all_pages_are_painted(Language language) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "station"));
        Map<String, Screen> pages = StationPages.all(language);
        boolean dark = false;
        for (Map.Entry<String, Screen> page : pages.entrySet()) {
            for (Size size :
                    language == Language.ENGLISH ? List.of(Size.TABLET, Size.TABLET_UPRIGHT) : List.of(Size.TABLET)) {
                ScreenPanel panel = panel(size, page.getValue(), dark);
                BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
                Graphics2D graphics = image.createGraphics();
                panel.paint(graphics);
                graphics.dispose();
                assertThat(colours(image)).as(page.getKey()).isGreaterThan(3);
                String name = (language + "-" + size + "-" + page.getKey()).replaceAll("[^A-Za-z0-9-]+", "-");
                ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
            }
            dark = !dark;
        }
    }

    private static long colours(BufferedImage image) {
        return java.util.stream.IntStream.range(0, image.getHeight() / 4)
                .flatMap(row -> java.util.stream.IntStream.range(0, image.getWidth() / 4)
                        .map(column -> image.getRGB(column * 4, row * 4)))
                .distinct()
                .count();
    }
}
