package strawbed.report.pdf;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.jspecify.annotations.Nullable;

/**
 * The tags of a document (ISO 32000-1, 14.7): what is read out, in order. Lines that stand right under each other are
 * one paragraph or heading; what shares a figure's role is one figure.
 */
final class Structure {
    /** The most white between two lines of a paragraph, in millimetres. */
    private static final double LINE_GAP = 0.3;

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement all = new PDStructureElement("Document", root);
    private final Map<Integer, COSObjectable> parents = new HashMap<>();

    Structure(PDDocument document, String language) {
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        all.setLanguage(language);
        root.appendKid(all);
    }

    /** Tags of one page, which is filled in order. */
    OfPage page(PDPage page) {
        return new OfPage(page, parents.size());
    }

    /** When every page is filled. */
    void finish() {
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(parents.size());
    }

    /** Of one page. */
    final class OfPage {
        private final PDPage page;
        private final COSArray owners = new COSArray();
        private @Nullable Drawn last;
        private PDStructureElement current = all;

        private OfPage(PDPage page, int key) {
            this.page = page;
            page.setStructParents(key);
            parents.put(key, new PDParentTreeValue(owners));
        }

        /** The element of what is drawn next gets another piece of content; gives the piece's number on the page. */
        int next(Drawn thing) {
            if (last == null || !goesOn(last, thing)) {
                current = new PDStructureElement(type(thing.role()), all);
                current.setPage(page);
                if (thing.role().kind() == Role.Kind.FIGURE) {
                    current.setAlternateDescription(thing.role().spoken());
                }
                all.appendKid(current);
            }
            last = thing;
            int number = owners.size();
            current.appendKid(number);
            owners.add(current);
            return number;
        }

        /** Something only for the eye stands between. */
        void interrupt() {
            if (last != null && last.role().kind() != Role.Kind.FIGURE) {
                last = null;
            }
        }
    }

    private static boolean goesOn(Drawn before, Drawn thing) {
        if (!before.role().equals(thing.role())) {
            return false;
        }
        Box above = before.box();
        Box below = thing.box();
        boolean isSameLine = below.y() < above.bottom() && above.y() < below.bottom() && below.x() >= above.x();
        boolean isNextLine = Math.abs(below.y() - above.bottom()) <= LINE_GAP;
        return thing.role().kind() == Role.Kind.FIGURE || isSameLine || isNextLine;
    }

    static COSName name(Role role) {
        return COSName.getPDFName(type(role));
    }

    private static String type(Role role) {
        String name = role.kind().name();
        return switch (role.kind()) {
            case H1, H2, P -> name;
            case FIGURE, ARTIFACT -> name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
        };
    }
}
