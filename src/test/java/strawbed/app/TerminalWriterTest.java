package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Control characters are those of ISO/IEC 6429 and ISO/IEC 2022, the C0 and C1 sets and delete. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TerminalWriterTest {
    @Test
    void what_could_move_the_cursor_or_hide_text_is_left_out() {
        StringWriter shown = new StringWriter();
        PrintWriter out = new PrintWriter(new TerminalWriter(shown));
        out.print("calf \u001b[2J12\u0007\u009b1m\u007f\b, heifer\n\tŁąka\r");
        out.print('\u001b');
        out.print(new char[] {'a', '\u0000', 'b'});
        out.flush();
        assertThat(shown).hasToString("calf [2J121m, heifer\n\tŁąka\rab");
    }
}
