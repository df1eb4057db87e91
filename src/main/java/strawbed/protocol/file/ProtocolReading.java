package strawbed.protocol.file;

import java.util.List;
import strawbed.protocol.Protocol;

/** What came of reading the file. */
public sealed interface ProtocolReading {
    /** All of it can be. What the file leaves out has its usual value. */
    record Good(Protocol protocol) implements ProtocolReading {}

    /**
     * Some of it cannot be, so that nothing of it counts.
     *
     * @param faults one or more, in the order of their lines
     */
    record Broken(List<FileFault> faults) implements ProtocolReading {
        public Broken {
            faults = List.copyOf(faults);
        }
    }
}
