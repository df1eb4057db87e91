/** What several tests share: tables, fakes and paths. */
@NullMarked
package strawbed.testkit;

import org.jspecify.annotations.NullMarked;
