package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;

/** What can be wrong with what is printed and mailed. */
final class DocumentExamples extends ExampleBooks {
  @Override
  void write() {
    add(
        ProblemKind.GLYPH_MISSING,
        "A letter can't be printed",
        "Write it in Latin, Greek, Cyrillic, Hebrew, Arabic, Devanagari, Thai, Chinese, Japanese or"
            + " Korean letters, without pictures.",
        visit(VISITS, DAY, "ጣና", "Bramble", "Trim", 45));
    add(
        ProblemKind.SETTING_MISSING,
        "An invoice lacks whom to pay, or how",
        "Put it into Settings. An IBAN or a Payment link says how to pay as well.",
        setting("Business name", ""));
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
    add(
        ProblemKind.E_INVOICE_INCOMPLETE,
        "An e-invoice can't be made",
        "Put in what is missing, or take the owner out with E-invoice = no. Until then the plain"
            + " invoice goes out alone.",
        good()
            .sheet("Owners", "Owner|Address|City|E-invoice")
            .row("Owners", "Ann", "1 Elm Road", "Hamburg", "factur-x")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Business name", "Thornfield Farriery")
            .row("Settings", "Country", "DE")
            .row("Settings", "Registration", ""));
    add(
        ProblemKind.REVERSE_CHARGE_WITHOUT_NUMBER,
        "Reverse charge without the owner's Tax number",
        "Put in the number under which the owner pays tax, or give the Work another tax code.",
        good()
            .sheet("Work", "Work|Price|Tax")
            .row("Work", "Trim", 45, "RC")
            .sheet("Tax", "Code|Name|Rate %|Kind")
            .row("Tax", "RC", "VAT", 0, "reverse charge")
            .sheet("Owners", "Owner|Tax number")
            .row("Owners", "Ann", ""));
    add(
        ProblemKind.TAX_RATE_UNUSED,
        "A rate where no tax is charged",
        "Mend the Kind or the rate. Until then no tax is charged.",
        good().sheet("Tax", "Code|Name|Rate %|Kind").row("Tax", "X", "VAT", 20, "exempt"));
    add(
        ProblemKind.EXEMPTION_CODE_UNKNOWN,
        "The VATEX list has no such code",
        "Mend the code, or write the reason in words.",
        good()
            .sheet("Owners", "Owner|Tax exempt|Exempt reason")
            .row("Owners", "Ann", "yes", "VATEX-EU-999"));
    add(
        ProblemKind.REFERENCE_REFUSED,
        "A creditor reference can't be made of the numbers",
        "Choose a shorter Invoice pattern, or leave Payment reference blank. Numbers whose letters"
            + " and digits are the same, such as 2026-01 and 20260-1, are refused too.",
        good()
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Invoice pattern", "FORGE-AND-FIELD-{yyyy}-{seq:4}")
            .row("Settings", "Payment reference", "RF"));
  }
}
