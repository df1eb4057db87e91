/**
 * The farm's protocol as a file: the only room that knows TOML (version 1.0).
 *
 * <p>Entry type: {@link strawbed.protocol.file.ProtocolFile}. What people wrote into the file is never an exception: it
 * is a protocol or a list of faults, each with its line. What the disk refuses when a file is written is a {@link
 * strawbed.protocol.file.ProtocolFileException} with the remedy. Everything is immutable and safe for any thread.
 */
@NullMarked
package strawbed.protocol.file;

import org.jspecify.annotations.NullMarked;
