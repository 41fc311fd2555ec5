package clenchbook.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Asks veraPDF whether a document keeps to PDF/A and PDF/UA. */
public final class ArchiveJudge {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private ArchiveJudge() {}

  /**
   * The rules of PDF/A-2b and PDF/UA-1 that a document breaks.
   *
   * @param pdf the document
   * @return each rule once, with the first place; empty when it keeps to all
   */
  public static List<String> brokenRules(byte[] pdf) {
    return brokenRules(pdf, PDFAFlavour.PDFA_2_B, PDFAFlavour.PDFUA_1);
  }

  /**
   * The rules that the documents of a folder break, on all processors.
   *
   * @param folder where they lie, or below
   * @return each broken rule with its file, by file
   */
  public static List<String> brokenRulesBelow(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> documents =
          files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
      return documents.parallelStream()
          .flatMap(file -> brokenRules(read(file)).stream().map(rule -> file + ": " + rule))
          .toList();
    }
  }

  private static byte[] read(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As {@link #brokenRules(byte[])}, for these standards. */
  public static List<String> brokenRules(byte[] pdf, PDFAFlavour... standards) {
    List<String> broken = new ArrayList<>();
    for (PDFAFlavour standard : standards) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
          PDFAValidator judge = Foundries.defaultInstance().createValidator(standard, false)) {
        ValidationResult verdict = judge.validate(parser);
        broken.addAll(rules(standard, verdict));
      } catch (ModelParsingException | EncryptedPdfException | ValidationException e) {
        broken.add(standard + ": " + e.getMessage());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return broken;
  }

  private static TreeSet<String> rules(PDFAFlavour standard, ValidationResult verdict) {
    TreeSet<String> rules = new TreeSet<>();
    TreeSet<String> seen = new TreeSet<>();
    for (TestAssertion finding : verdict.getTestAssertions()) {
      if (finding.getStatus() == TestAssertion.Status.FAILED) {
        String rule = finding.getRuleId().getClause() + "-" + finding.getRuleId().getTestNumber();
        if (seen.add(rule)) {
          rules.add(
              standard.getId()
                  + " "
                  + rule
                  + " "
                  + finding.getMessage()
                  + " at "
                  + finding.getLocation().getContext());
        }
      }
    }
    if (!verdict.isCompliant() && rules.isEmpty()) {
      rules.add(standard.getId() + ": not compliant");
    }
    return rules;
  }
}
