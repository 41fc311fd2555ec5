package clenchbook.einvoice;

import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.Source;
import javax.xml.transform.Templates;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.stream.StreamResult;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The official rules, as their publishers issue them, run on a class path of their own because they
 * bring another XML processor.
 *
 * <p>Sources: CEN/TC 434, EN 16931 validation artefacts for CII, release 1.3.16 (in
 * phive-rules-en16931 4.3.7); KoSIT, XRechnung Schematron 3.0.2 (in phive-rules-xrechnung 4.2.3);
 * FNFE-MPE and FeRD, Factur-X 1.08 / ZUGFeRD 2.4 schema and rules, profile EN 16931 (in
 * phive-rules-zugferd 4.2.3).
 */
public final class OfficialRules {
  private static final File JUDGES = new File("target/e-invoice-judges");
  private static final ClassLoader LOADER = loader();
  private static final Templates EN_16931 =
      rules("external/schematron/1.3.16/cii/EN16931-CII-validation.xslt");
  private static final Templates XRECHNUNG =
      rules("external/schematron/3.0.2/XRechnung-CII-validation.xslt");
  private static final Templates FACTUR_X = rules("external/schematron/2.4/FACTUR-X_EN16931.xslt");
  private static final Schema SCHEMA = schema("external/schemas/2.4/en16931/FACTUR-X_EN16931.xsd");

  private OfficialRules() {}

  /**
   * What the rules of a profile find wrong: the schema's, EN 16931's and the profile's own.
   *
   * @param profile which rules beside EN 16931
   * @param xml the structured invoice
   * @return one text for each rule broken, warnings included; empty for a sound invoice
   */
  public static List<String> broken(EInvoiceProfile profile, String xml) {
    List<String> broken = new ArrayList<>();
    try {
      SCHEMA.newValidator().validate(new StreamSource(new StringReader(xml)));
    } catch (SAXException | IOException wrong) {
      broken.add("schema: " + wrong.getMessage());
    }
    broken.addAll(broken(EN_16931, xml));
    broken.addAll(broken(profile == EInvoiceProfile.XRECHNUNG ? XRECHNUNG : FACTUR_X, xml));
    return broken;
  }

  private static List<String> broken(Templates rules, String xml) {
    List<String> broken = new ArrayList<>();
    Document report = report(rules, xml);
    if (report.getElementsByTagNameNS("*", "fired-rule").getLength() == 0) {
      throw new IllegalStateException("no rule looked at the invoice");
    }
    NodeList failed = report.getElementsByTagNameNS("*", "failed-assert");
    for (int index = 0; index < failed.getLength(); index++) {
      Element each = (Element) failed.item(index);
      broken.add(
          each.getAttribute("id") + ": " + each.getTextContent().strip().replaceAll("\\s+", " "));
    }
    return broken;
  }

  private static Document report(Templates rules, String xml) {
    try {
      StringWriter report = new StringWriter();
      rules
          .newTransformer()
          .transform(new StreamSource(new StringReader(xml)), new StreamResult(report));
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      return factory
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(report.toString())));
    } catch (TransformerException | SAXException | IOException | ParserConfigurationException e) {
      throw new IllegalStateException("the rules could not be run", e);
    }
  }

  private static ClassLoader loader() {
    File[] jars = JUDGES.listFiles((folder, name) -> name.endsWith(".jar"));
    if (jars == null || jars.length == 0) {
      throw new IllegalStateException("the build lays the rules into " + JUDGES);
    }
    URL[] places = new URL[jars.length];
    try {
      for (int index = 0; index < jars.length; index++) {
        places[index] = jars[index].toURI().toURL();
      }
    } catch (MalformedURLException e) {
      throw new IllegalStateException(e);
    }
    return new URLClassLoader(places, ClassLoader.getPlatformClassLoader());
  }

  private static Templates rules(String name) {
    try {
      TransformerFactory factory =
          (TransformerFactory)
              Class.forName("net.sf.saxon.TransformerFactoryImpl", true, LOADER)
                  .getConstructor()
                  .newInstance();
      return factory.newTemplates(source(name));
    } catch (ReflectiveOperationException | TransformerException e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static Schema schema(String name) {
    try {
      return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(source(name));
    } catch (SAXException e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static Source source(String name) {
    URL place = LOADER.getResource(name);
    if (place == null) {
      throw new IllegalStateException("not among the rules: " + name);
    }
    return new StreamSource(place.toExternalForm());
  }
}
