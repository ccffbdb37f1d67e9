package bedledger.cli.paper;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/** Says on each link where it leads, as ISO 14289-1, 7.18.5 asks; the library says it only on the tag around the link. */
final class LinkWords {
    static void into(PDDocument document) throws IOException {
        PDNumberTreeNode tags =
                document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink && annotation.getContents() == null) {
                    annotation.setContents(words(tags.getValue(annotation.getStructParent())));
                }
            }
        }
    }

    /** The description of the tag that a link stands in. */
    private static String words(Object tag) {
        if (tag instanceof COSObjectable value && value.getCOSObject() instanceof COSDictionary dictionary) {
            String said = dictionary.getString(COSName.ALT);
            return said == null ? "Link" : said;
        }
        return "Link";
    }

    private LinkWords() {}
}
