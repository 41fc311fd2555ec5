package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;

/** What can be wrong with what is printed and mailed. */
final class DocumentExamples extends ExampleBooks {
  @Override
  void write() {
    add(
        ProblemKind.GLYPH_MISSING,
        "A letter can't be printed",
        "Write the name in Latin, Greek or Cyrillic letters.",
        visit(VISITS, DAY, "王", "Bramble", "Trim", 45));
    add(
        ProblemKind.LOGO_UNUSABLE,
        "The logo can't be used",
        "Put a PNG or JPEG of at most 5 MB beside the workbook and name it here.",
        setting("Logo", "missing.png"));
    add(
        ProblemKind.PAYMENT_LINK_UNUSABLE,
        "The payment link can't be used",
        "Only an address that begins with https:// is printed.",
        setting("Payment link", "http://pay.example"));
    add(
        ProblemKind.ADDRESS_UNUSABLE,
        "Mail can't be sent to an address",
        "Put in one address. Until then the invoice is on the list to print.",
        good().sheet("Owners", "Owner|Email").row("Owners", "Ann", "ann at example"));
  }
}
