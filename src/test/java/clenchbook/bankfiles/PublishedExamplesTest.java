package clenchbook.bankfiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.matching.bank.BankStatement;
import clenchbook.matching.bank.StatementCheck;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Examples that the keepers of each format have published, with their figures. */
class PublishedExamplesTest {
  @TempDir Path folder;

  private Intake read(String text) throws IOException {
    Path file = Files.write(folder.resolve("file"), text.getBytes(StandardCharsets.UTF_8));
    Intake intake = new Intake();
    StatementFile.read(file, "file", new Hints(false, "EUR"), intake);
    return intake;
  }

  private static BigDecimal money(String text) {
    return new BigDecimal(text);
  }

  /**
   * ISO 20022, Bank-to-Customer Cash Management, message definition report, business example of the
   * bank-to-customer statement (AAAASESS-FP-STAT001): three entries of 18 October 2010, one of them
   * a batch without details, one in another currency.
   */
  @Test
  void the_statement_of_the_iso_20022_report() throws IOException {
    Intake intake =
        read(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <Document xmlns="urn:iso:std:iso:20022:tech:xsd:camt.053.001.04"><BkToCstmrStmt>
            <GrpHdr><MsgId>AAAASESS-FP-STAT001</MsgId><CreDtTm>2010-10-18T17:00:00+01:00</CreDtTm>
            <MsgPgntn><PgNb>1</PgNb><LastPgInd>true</LastPgInd></MsgPgntn></GrpHdr>
            <Stmt><Id>AAAASESS-FP-STAT001</Id><CreDtTm>2010-10-18T17:00:00+01:00</CreDtTm>
            <FrToDt><FrDtTm>2010-10-18T08:00:00+01:00</FrDtTm><ToDtTm>2010-10-18T17:00:00+01:00</ToDtTm></FrToDt>
            <Acct><Id><Othr><Id>50000000054910000003</Id></Othr></Id></Acct>
            <Bal><Tp><CdOrPrtry><Cd>OPBD</Cd></CdOrPrtry></Tp><Amt Ccy="SEK">500000</Amt>
            <CdtDbtInd>CRDT</CdtDbtInd><Dt><Dt>2010-10-15</Dt></Dt></Bal>
            <Bal><Tp><CdOrPrtry><Cd>CLBD</Cd></CdOrPrtry></Tp><Amt Ccy="SEK">435678.50</Amt>
            <CdtDbtInd>CRDT</CdtDbtInd><Dt><Dt>2010-10-18</Dt></Dt></Bal>
            <Ntry><Amt Ccy="SEK">105678.50</Amt><CdtDbtInd>CRDT</CdtDbtInd><Sts>BOOK</Sts>
            <BookgDt><DtTm>2010-10-18T13:15:00+01:00</DtTm></BookgDt><ValDt><Dt>2010-10-18</Dt></ValDt>
            <AcctSvcrRef>AAAASESS-FP-CN_98765/01</AcctSvcrRef><NtryDtls><TxDtls>
            <Refs><EndToEndId>MUELL/FINP/RA12345</EndToEndId></Refs><Amt Ccy="SEK">0</Amt>
            <CdtDbtInd>CRDT</CdtDbtInd><RltdPties><Dbtr><Nm>MUELLER</Nm></Dbtr></RltdPties>
            </TxDtls></NtryDtls></Ntry>
            <Ntry><Amt Ccy="SEK">200000</Amt><CdtDbtInd>DBIT</CdtDbtInd><Sts>BOOK</Sts>
            <BookgDt><DtTm>2010-10-18T10:15:00+01:00</DtTm></BookgDt><AcctSvcrRef>AAAASESS-FP-ACCR-01</AcctSvcrRef>
            <NtryDtls><Btch><MsgId>FINP-0055</MsgId><PmtInfId>FINP-0055/001</PmtInfId><NbOfTxs>20</NbOfTxs></Btch></NtryDtls></Ntry>
            <Ntry><Amt Ccy="SEK">30000</Amt><CdtDbtInd>CRDT</CdtDbtInd><Sts>BOOK</Sts>
            <BookgDt><DtTm>2010-10-18T15:15:00+01:00</DtTm></BookgDt><AcctSvcrRef>AAAASESS-FP-CONF-FX</AcctSvcrRef>
            <NtryDtls><TxDtls><Refs><EndToEndId>AAAASS1085FINPSS</EndToEndId></Refs><Amt Ccy="EUR">3255</Amt>
            <CdtDbtInd>CRDT</CdtDbtInd></TxDtls></NtryDtls></Ntry>
            </Stmt></BkToCstmrStmt></Document>
            """);
    List<BankEntry> entries = intake.entries();
    assertEquals(
        List.of(money("105678.50"), money("-200000"), money("30000")),
        entries.stream().map(BankEntry::amount).toList());
    assertEquals("MUELLER", entries.get(0).who());
    assertEquals("MUELL/FINP/RA12345", entries.get(0).endToEnd());
    assertEquals("AAAASESS-FP-CN_98765/01", entries.get(0).bankReference());
    String note = InEnglish.said(entries.get(1).note());
    assertTrue(note.contains("20 payments"), note);
    assertEquals("SEK", entries.get(2).currency());
    assertEquals(List.of(), StatementCheck.of(intake.statements(), entries).faults());
  }

  /**
   * Swiss Payment Standards, camt.054 with a collective booking (the published example of 27 July
   * 2017: 113.00 in two transactions of 111.00 and 2.00), here in version 8.
   */
  @Test
  void a_swiss_batch_is_taken_apart() throws IOException {
    String part =
        "<TxDtls><Refs><AcctSvcrRef>%s</AcctSvcrRef></Refs><Amt"
            + " Ccy=\"CHF\">%s</Amt><CdtDbtInd>CRDT</CdtDbtInd>"
            + "<RltdPties><Dbtr><Pty><Nm>%s</Nm></Pty></Dbtr></RltdPties><RmtInf><Ustrd>TEST"
            + " MITTEILUNG</Ustrd></RmtInf></TxDtls>";
    Intake intake =
        read(
            "<Document"
                + " xmlns=\"urn:iso:std:iso:20022:tech:xsd:camt.054.001.08\"><BkToCstmrDbtCdtNtfctn>"
                + "<GrpHdr><MsgId>1</MsgId></GrpHdr><Ntfctn><Id>1</Id><Acct><Id><IBAN>CH160077401231234567</IBAN></Id></Acct><Ntry><Amt"
                + " Ccy=\"CHF\">113.00</Amt><CdtDbtInd>CRDT</CdtDbtInd><RvslInd>false</RvslInd>"
                + "<Sts><Cd>BOOK</Cd></Sts><BookgDt><Dt>2017-07-27</Dt></BookgDt><NtryDtls><Btch><NbOfTxs>2</NbOfTxs>"
                + "</Btch>"
                + part.formatted("170727CH00A1ABCD", "111.00", "Ada Lovelace")
                + part.formatted("170727CH00A2ABCD", "2.00", "Lord Bayron")
                + "</NtryDtls></Ntry></Ntfctn></BkToCstmrDbtCdtNtfctn></Document>");
    assertEquals(
        List.of("1#1 111.00 Ada Lovelace", "1#2 2.00 Lord Bayron"),
        intake.entries().stream().map(e -> e.label() + " " + e.amount() + " " + e.who()).toList());
    assertTrue(!intake.statements().get(0).whole());
  }

  /**
   * Open Financial Exchange 2.0.3, chapter 11, the worked statement download: a cheque of 200, cash
   * of 300, a ledger balance of 200.29. The same in the form of version 1 (1.0.2, chapter 11).
   */
  @Test
  void the_statement_download_of_the_ofx_specification() throws IOException {
    String xml =
        "<?xml version=\"1.0\"?><?OFX OFXHEADER=\"200\""
            + " VERSION=\"203\"?><OFX><BANKMSGSRSV1><STMTTRNRS>"
            + "<TRNUID>1001</TRNUID><STATUS><CODE>0</CODE><SEVERITY>INFO</SEVERITY></STATUS><STMTRS>"
            + "<CURDEF>USD</CURDEF><BANKACCTFROM><BANKID>318398732</BANKID><ACCTID>78346129</ACCTID>"
            + "<ACCTTYPE>CHECKING</ACCTTYPE></BANKACCTFROM><BANKTRANLIST><DTSTART>20060101</DTSTART>"
            + "<DTEND>20060115</DTEND><STMTTRN><TRNTYPE>CHECK</TRNTYPE><DTPOSTED>20060104</DTPOSTED>"
            + "<TRNAMT>-200.00</TRNAMT><FITID>00592</FITID><CHECKNUM>2002</CHECKNUM></STMTTRN>"
            + "<STMTTRN><TRNTYPE>ATM</TRNTYPE><DTPOSTED>20060112</DTPOSTED><DTUSER>20060112</DTUSER>"
            + "<TRNAMT>-300.00</TRNAMT><FITID>00679</FITID></STMTTRN></BANKTRANLIST><LEDGERBAL>"
            + "<BALAMT>200.29</BALAMT><DTASOF>200601141600</DTASOF></LEDGERBAL></STMTRS></STMTTRNRS>"
            + "</BANKMSGSRSV1></OFX>";
    String sgml =
        "OFXHEADER:100\nDATA:OFXSGML\nVERSION:102\nENCODING:USASCII\nCHARSET:1252\n\n"
            + xml.substring(xml.indexOf("<OFX>"))
                .replaceAll(
                    "</(TRNUID|CODE|SEVERITY|CURDEF|BANKID|ACCTID|ACCTTYPE|DTSTART|DTEND|TRNTYPE|DTPOSTED"
                        + "|TRNAMT|FITID|CHECKNUM|DTUSER|BALAMT|DTASOF)>",
                    "\n");
    for (String text : List.of(xml, sgml)) {
      Intake intake = read(text);
      assertEquals(
          List.of("2006-01-04 -200.00 00592", "2006-01-12 -300.00 00679"),
          intake.entries().stream()
              .map(e -> e.date() + " " + e.amount() + " " + e.bankReference())
              .toList());
      BankStatement statement = intake.statements().get(0);
      assertEquals("USD", statement.currency());
      assertEquals("78346129", statement.account());
      assertEquals(Optional.of(money("200.29")), statement.closing());
      assertEquals(Optional.of(LocalDate.of(2006, 1, 1)), statement.from());
    }
  }

  /**
   * German business transaction codes with numbered subfields (Deutsche Kreditwirtschaft, DFÜ
   * agreement annex 3, chapter 8, field 86), as in published test statements of German banks: a
   * rejected transfer (code 159, reason 914) and one whose debit was reversed (RC).
   */
  @Test
  void german_numbered_subfields_returns_and_reversals() throws IOException {
    Intake intake =
        read(
            """
            :20:T089413946000001
            :25:50880050/0194774600888
            :28C:00004/00001
            :60F:D070903EUR1000,
            :61:0709040904CR300,NTRFTFNr 40005 MSGID//0724710345313905
            :86:159?00RETOURE?100399?20EREF+TFNR 40005 00005?21MTLG:Grund nicht s
            pezifizie?22rt Reject aus SEPA-Ueberwei?23sungsauftrag?34914
            :61:0709040904RCR204,88NRTINONREF
            :86:079?00SAMMLER/STORNO?109800?200904059003
            :61:0709040904CR15000,05NTRFNONREF//0724710290621954
            :86:166?00GUTSCHRIFT?100399?20EREF+EndToEndIdTFNR20004000?2101?22SVWZ
            +TO 13 TFNr 20004 Einga?23ngskanal Mint?30PBNKDEFF100?31DE421001001000
            43921105?32Richter Renate 70 Zeichen B?33eginn
            :62F:C070904EUR14095,17
            -
            """);
    List<BankEntry> entries = intake.entries();
    assertEquals(
        List.of(money("300"), money("-204.88"), money("15000.05")),
        entries.stream().map(BankEntry::amount).toList());
    assertEquals(Standing.RETURNED, entries.get(0).standing());
    assertEquals(Standing.RETURNED, entries.get(1).standing());
    assertEquals("Richter Renate 70 Zeichen Beginn", entries.get(2).who());
    assertEquals("TO 13 TFNr 20004 Eingangskanal Mint", entries.get(2).text());
    assertEquals("DE42100100100043921105", entries.get(2).account());
    assertEquals(List.of(), StatementCheck.of(intake.statements(), entries).faults());
  }

  /**
   * Dutch code words between slashes, wrapped at 65 signs (SWIFT MT940 structured, format
   * descriptions of Dutch banks, 2013: opening 1000.00, two debits, closing 965.00).
   */
  @Test
  void dutch_code_words_between_slashes() throws IOException {
    Intake intake =
        read(
            """
            :940:
            :20:940S130101
            :25:NL71RABO0123456789
            :28C:0
            :60F:C130101EUR000000001000,00
            :61:130101D000000000025,00N102EREF
            NL70ABNA0987654321
            :86:/EREF/01-01-2013 12:00 0030000987654321/BENM//NAME/CONTRA ACCOUN
            T HOLDER/REMI//ISDT/2013-07-11
            :61:130102D000000000010,00N154NONREF
            P001234567
            :86:/BENM//NAME/JOHN DOE/REMI/Reference 201301234/ISDT/2013-01-02
            :62F:C130108EUR000000000965,00
            """);
    assertEquals(
        List.of("CONTRA ACCOUNT HOLDER", "JOHN DOE"),
        intake.entries().stream().map(BankEntry::who).toList());
    assertEquals("Reference 201301234", intake.entries().get(1).text());
    assertEquals(List.of(), StatementCheck.of(intake.statements(), intake.entries()).faults());
  }

  /**
   * No body keeps a standard of banks' CSV; some banks describe theirs. The row of headings is that
   * of "Format description CSV (csv-extension) Rabo Internetbanking (Professional)", version 1.0,
   * December 2017, chapter 2; the rows are invented.
   */
  @Test
  void the_csv_that_a_dutch_bank_describes() throws IOException {
    Intake intake =
        read(
            """
            "IBAN/BBAN","Munt","BIC","Volgnr","Datum","Rentedatum","Bedrag","Saldo na trn","Tegenrekening IBAN/BBAN","Naam tegenpartij","Naam uiteindelijke partij","Naam initiërende partij","BIC tegenpartij","Code","Batch ID","Transactiereferentie","Machtigingskenmerk","Incassant ID","Betalingskenmerk","Omschrijving-1","Omschrijving-2","Omschrijving-3","Reden retour","Oorspr bedrag","Oorspr munt","Koers"
            "NL71RABO0123456789","EUR","RABONL2U","000000000000000101","2026-11-02","2026-11-02","+1.250,00","3.250,00","NL70ABNA0987654321","Manege Kleefeld","","","ABNANL2A","cb","","REF7","","","","factuur 2026-0041","bedankt","","","","",""
            "NL71RABO0123456789","EUR","RABONL2U","000000000000000102","2026-11-03","2026-11-03","-47,50","3.202,50","NL02ABNA0123456789","Smidse Handel","","","ABNANL2A","ei","","","","","","staal","","","","-50,00","USD","0,95"
            """);
    assertEquals(
        List.of("2026-11-02 1250.00 Manege Kleefeld", "2026-11-03 -47.50 Smidse Handel"),
        intake.entries().stream().map(e -> e.date() + " " + e.amount() + " " + e.who()).toList());
    assertEquals("factuur 2026-0041 bedankt", intake.entries().get(0).text());
    assertEquals("NL70ABNA0987654321", intake.entries().get(0).account());
    assertEquals("NL71RABO0123456789", intake.statements().get(0).account());
    assertEquals(Optional.of(money("2000.00")), intake.statements().get(0).opening());
    assertEquals(List.of(), StatementCheck.of(intake.statements(), intake.entries()).faults());
  }

  /**
   * The headings of German savings banks' "CSV-CAMT" (as published importers of plain-text
   * accounting list them; no description by the banks was found); the rows are invented.
   */
  @Test
  void the_csv_of_german_savings_banks() throws IOException {
    Intake intake =
        read(
            """
            "Auftragskonto";"Buchungstag";"Valutadatum";"Buchungstext";"Verwendungszweck";"Glaeubiger ID";"Mandatsreferenz";"Kundenreferenz (End-to-End)";"Sammlerreferenz";"Lastschrift Ursprungsbetrag";"Auslagenersatz Ruecklastschrift";"Beguenstigter/Zahlungspflichtiger";"Kontonummer/IBAN";"BIC (SWIFT-Code)";"Betrag";"Waehrung";"Info"
            "DE89370400440532013000";"02.11.26";"02.11.26";"GUTSCHR. UEBERWEISUNG";"Rechnung 2026-0041";"";"";"NOTPROVIDED";"";"";"";"Reitstall Ahorn";"DE21500500009876543210";"HELADEFFXXX";"1250,00";"EUR";"Umsatz gebucht"
            "DE89370400440532013000";"03.11.26";"03.11.26";"KARTENZAHLUNG";"Eisenhandel";"";"";"";"";"";"";"EISEN SAGT DANKE";"";"";"-47,50";"EUR";"Umsatz gebucht"
            """);
    assertEquals(
        List.of("2026-11-02 1250.00 Reitstall Ahorn", "2026-11-03 -47.50 EISEN SAGT DANKE"),
        intake.entries().stream().map(e -> e.date() + " " + e.amount() + " " + e.who()).toList());
    assertEquals("Rechnung 2026-0041", intake.entries().get(0).text());
    assertEquals("DE89370400440532013000", intake.statements().get(0).account());
  }

  /** An export whose every row bears the farrier's own account; common practice, no source. */
  @Test
  void one_account_on_every_row_is_the_farriers_own() throws IOException {
    Intake intake =
        read(
            """
            Transaction Date,Transaction Type,Sort Code,Account Number,Transaction Description,Debit Amount,Credit Amount,Balance
            03/11/2026,FPI,'11-22-33,12345678,A AHORN 2026-0041,,120.00,620.00
            02/11/2026,DEB,'11-22-33,12345678,SMITHY SUPPLIES,47.50,,500.00
            """);
    assertEquals(List.of("", ""), intake.entries().stream().map(BankEntry::account).toList());
    assertEquals("12345678", intake.statements().get(0).account());
    assertEquals(
        List.of(money("120.00"), money("-47.50")),
        intake.entries().stream().map(BankEntry::amount).toList());
  }
}
