package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.report.TestPage;
import strawbed.text.Messages;
import strawbed.text.PrintPhrases;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TestPageLayoutTest {
    private static final double ROUNDING = 1e-6;
    private static final double FRAME = 5;

    private static List<Drawn> laid(double width, double height, int bar) throws IOException {
        PrintPhrases phrases = PrintPhrases.shown(new Messages(Locale.US));
        TestPage page = new TestPage(
                phrases.testTitle(),
                phrases.testHowTo(bar),
                bar,
                phrases.testLines(),
                samples(phrases, "0.3", "0.4", "0.6", "1.0"),
                phrases.testLetters(),
                samples(phrases, "2.0", "2.6", "2.8", "3.3"),
                phrases.testSample(),
                "en-US");
        try (Type type = Type.open()) {
            return TestPageLayout.of(type, page, width, height);
        }
    }

    private static List<TestPage.Sample> samples(PrintPhrases phrases, String... sizes) {
        return Stream.of(sizes)
                .map(size -> new TestPage.Sample(phrases.testSize(new BigDecimal(size)), Double.parseDouble(size)))
                .toList();
    }

    private static List<Box> bars(List<Drawn> laid) {
        return laid.stream().filter(Drawn.Bar.class::isInstance).map(Drawn::box).toList();
    }

    @ParameterizedTest
    @CsvSource({"152.4,101.6,80", "148,105,80", "215.9,279.4,100", "210,297,100"})
    void no_words_touch_anything_or_the_frame(double width, double height, int bar) throws IOException {
        List<Drawn> laid = laid(width, height, bar);
        List<Drawn> words = laid.stream().filter(Drawn.Words.class::isInstance).toList();
        assertThat(words).hasSizeGreaterThan(20);
        for (Drawn one : words) {
            Box box = one.box();
            assertThat(Math.min(box.x(), box.y())).as(one.toString()).isGreaterThan(FRAME + 1);
            assertThat(box.right()).as(one.toString()).isLessThan(width - FRAME - 1);
            assertThat(box.bottom()).as(one.toString()).isLessThan(height - FRAME - 1);
            for (Drawn other : laid) {
                boolean touch = other != one
                        && box.x() < other.box().right()
                        && other.box().x() < box.right()
                        && box.y() < other.box().bottom()
                        && other.box().y() < box.bottom();
                assertThat(touch).as(one + " and " + other).isFalse();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"152.4,101.6,80", "210,297,100"})
    void both_rulers_are_as_long_as_they_say_with_a_tick_each_millimetre(double width, double height, int bar)
            throws IOException {
        List<Box> bars = bars(laid(width, height, bar));
        assertThat(bars).anyMatch(box -> Math.abs(box.width() - bar) < ROUNDING && box.height() < 0.5);
        assertThat(bars).anyMatch(box -> Math.abs(box.height() - bar) < ROUNDING && box.width() < 0.5);
        List<Box> across = bars.stream()
                .filter(box -> box.width() < 0.2 && box.height() < 4)
                .toList();
        assertThat(across).hasSize(bar + 1);
        for (int i = 0; i < bar; i++) {
            assertThat(across.get(i).x() - across.get(0).x()).isCloseTo(i, within(ROUNDING));
        }
        assertThat(across.get(bar).right() - across.get(0).x()).isCloseTo(bar, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"152.4,101.6,80", "215.9,279.4,100"})
    void the_frame_is_five_millimetres_from_each_edge_and_the_thinnest_line_a_third(
            double width, double height, int bar) throws IOException {
        List<Box> bars = bars(laid(width, height, bar));
        assertThat(bars.stream().mapToDouble(Box::x).min()).hasValue(FRAME);
        assertThat(bars.stream().mapToDouble(Box::y).min()).hasValue(FRAME);
        assertThat(bars.stream().mapToDouble(Box::right).max().orElse(0)).isCloseTo(width - FRAME, within(ROUNDING));
        assertThat(bars.stream().mapToDouble(Box::bottom).max().orElse(0)).isCloseTo(height - FRAME, within(ROUNDING));
        for (double line : new double[] {0.3, 0.4, 0.6, 1.0}) {
            assertThat(bars).anyMatch(box -> box.height() == line && box.width() > 10);
            assertThat(bars).anyMatch(box -> box.width() == line && box.height() > 2);
        }
    }
}
