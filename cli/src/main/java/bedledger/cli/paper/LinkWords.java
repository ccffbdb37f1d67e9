package bedledger.cli.paper;

import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.jspecify.annotations.Nullable;

/** Says on each link where it leads, as ISO 14289-1, 7.18.5 asks; the library says it only on the tag around the link. */
final class LinkWords {
    static void into(PDDocument document) throws IOException {
        PDNumberTreeNode tree =
                document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
        // Asked one by one, the tree is read anew for each of thousands of links.
        Map<Integer, COSObjectable> tags = tree.getNumbers() == null ? Map.of() : tree.getNumbers();
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink && annotation.getContents() == null) {
                    annotation.setContents(words(tags.get(annotation.getStructParent())));
                }
            }
        }
    }

    /** The description of the tag that a link stands in. */
    private static String words(@Nullable COSObjectable tag) {
        if (tag != null && tag.getCOSObject() instanceof COSDictionary dictionary) {
            String said = dictionary.getString(COSName.ALT);
            return said == null ? "Link" : said;
        }
        return "Link";
    }

    private LinkWords() {}
}
