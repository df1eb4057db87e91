package strawbed.protocol.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import strawbed.protocol.Protocol;

/** What reading gave, as the tests expect it. */
final class Read {
    private Read() {}

    static Protocol good(String text) {
        ProtocolReading reading = ProtocolFile.parse(text);
        assertThat(reading).as(text).isInstanceOf(ProtocolReading.Good.class);
        return ((ProtocolReading.Good) reading).protocol();
    }

    static List<String> faults(ProtocolReading reading) {
        assertThat(reading).isInstanceOf(ProtocolReading.Broken.class);
        List<FileFault> faults = ((ProtocolReading.Broken) reading).faults();
        assertThat(faults).isNotEmpty();
        return faults.stream().map(FileFault::sentence).toList();
    }

    static List<String> faults(String text) {
        return faults(ProtocolFile.parse(text));
    }
}
