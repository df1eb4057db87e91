/** What several rooms' tests share. */
@NullMarked
package strawbed.testkit;

import org.jspecify.annotations.NullMarked;
