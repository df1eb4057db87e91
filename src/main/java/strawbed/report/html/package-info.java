/**
 * Documents as pages for a browser, each in one file that asks for nothing else.
 *
 * <p>Entry type: {@link strawbed.report.html.HtmlHerdWriter}.
 */
@NullMarked
package strawbed.report.html;

import org.jspecify.annotations.NullMarked;
