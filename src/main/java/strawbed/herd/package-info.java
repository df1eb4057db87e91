/**
 * The herd's report as the content of a document: chapters, figures and pictures, without any thought of paper.
 *
 * <p>Entry type: {@link strawbed.herd.HerdContents}. Immutable and safe for any thread.
 */
@NullMarked
package strawbed.herd;

import org.jspecify.annotations.NullMarked;
