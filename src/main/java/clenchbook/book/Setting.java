package clenchbook.book;

import java.util.List;

/** The settings by their names in the workbook, with the default that a blank one has. */
public enum Setting {
  /** The name at the head of the invoice. */
  BUSINESS_NAME("Business name", Type.TEXT, ""),
  /** The business's address. */
  ADDRESS("Address", Type.TEXT, ""),
  /** The postcode, where it does not stand in the address. */
  POSTCODE("Postcode", Type.TEXT, ""),
  /** The city, where it does not stand in the address. */
  CITY("City", Type.TEXT, ""),
  /** Whom to ask about an invoice. */
  CONTACT("Contact", Type.TEXT, ""),
  /** The business's e-mail address. */
  EMAIL("Email", Type.TEXT, ""),
  /** Telephone. */
  PHONE("Phone", Type.TEXT, ""),
  /** A registration of the trade, printed as given. */
  REGISTRATION("Registration", Type.TEXT, ""),
  /** The tax number. */
  TAX_NUMBER("Tax number", Type.TEXT, ""),
  /** How to pay, in words. */
  PAYMENT_TEXT("Payment text", Type.TEXT, ""),
  /** Bank account. */
  IBAN("IBAN", Type.IBAN, ""),
  /** The bank's code. */
  BIC("BIC", Type.TEXT, ""),
  /** The sender of mails. */
  FROM_ADDRESS("From address", Type.TEXT, ""),
  /** A picture file in the workbook's folder or below. */
  LOGO("Logo", Type.TEXT, ""),
  /** A link to pay by; https only. */
  PAYMENT_LINK("Payment link", Type.TEXT, ""),
  /** Country, ISO 3166 alpha-2. */
  COUNTRY("Country", Type.COUNTRY, ""),
  /** Currency, ISO 4217. */
  CURRENCY("Currency", Type.CURRENCY, ""),
  /** Language, ISO 639-1. */
  LANGUAGE("Language", Type.LANGUAGE, ""),
  /** Metric or imperial. */
  UNITS("Units", Type.CHOICE, "metric", "metric", "imperial"),
  /** Kilometres or miles. */
  DISTANCE_UNIT("Distance unit", Type.CHOICE, "km", "km", "mile"),
  /** Order of text dates. */
  DATE_ORDER("Date order", Type.CHOICE, "", "dmy", "mdy", "ymd"),
  /** The tax summary's regime. */
  TAX_REGIME("Tax regime", Type.CHOICE, "plain", "plain", "us", "uk", "au", "de", "ca"),
  /** Whether prices include tax. */
  PRICES_INCLUDE_TAX("Prices include tax", Type.YES_NO, "no"),
  /** Where tax is rounded. */
  TAX_ON("Tax on", Type.CHOICE, TaxOn.INVOICE.word(), TaxOn.INVOICE.word(), TaxOn.LINE.word()),
  /** Whether input tax comes back; blank = by the tax number and regime. */
  INPUT_TAX_RECOVERED("Input tax recovered", Type.YES_NO, ""),
  /** Days to pay. */
  TERMS_DAYS("Terms days", Type.WHOLE, "14"),
  /** Days in which a free or lost-shoe visit is a callback. */
  CALLBACK_DAYS("Callback days", Type.WHOLE, "14"),
  /** A note on the statement, per cent a month. */
  LATE_FEE("Late fee % per month", Type.DECIMAL, "0"),
  /** The form of invoice numbers. */
  INVOICE_PATTERN("Invoice pattern", Type.TEXT, "{yyyy}-{seq:4}"),
  /** The first sequence number of an empty register. */
  NEXT_INVOICE_NUMBER("Next invoice number", Type.WHOLE, "1"),
  /** What the farrier's hour should earn. */
  HOURLY_WAGE("Hourly wage", Type.DECIMAL, "0"),
  /** What a helper's hour costs. */
  HELPER_WAGE("Helper wage", Type.DECIMAL, "0"),
  /** Vehicle cost per distance unit. */
  VEHICLE_COST("Vehicle cost per distance", Type.DECIMAL, "0"),
  /** Gas cost per kilogram. */
  GAS_COST_KG("Gas cost per kg", Type.DECIMAL, "0"),
  /** Gas cost per pound. */
  GAS_COST_LB("Gas cost per lb", Type.DECIMAL, ""),
  /** Gas cost per US gallon of propane. */
  GAS_COST_GALLON("Gas cost per gallon", Type.DECIMAL, ""),
  /** Sundries used up per horse-visit. */
  SUNDRIES("Sundries per horse", Type.DECIMAL, "0"),
  /** Hours a year of job, making and driving. */
  HOURS_PER_YEAR("Hours per year", Type.DECIMAL, "1500"),
  /** Overheads a year; blank = from the book's expenses. */
  YEARLY_OVERHEADS("Yearly overheads", Type.DECIMAL, ""),
  /** Burn in kilograms an hour. */
  GAS_BURN_KG("Gas burn kg per hour", Type.DECIMAL, "0.8"),
  /** Burn in pounds an hour. */
  GAS_BURN_LB("Gas burn lb per hour", Type.DECIMAL, ""),
  /** Minutes to set the forge up at a stop. */
  FORGE_SETUP_MIN("Forge setup min", Type.DECIMAL, "5"),
  /** Minutes of gas to heat it at a stop. */
  FORGE_SETUP_GAS_MIN("Forge setup gas min", Type.DECIMAL, "5"),
  /** Days a supplier takes. */
  LEAD_DAYS("Lead days", Type.WHOLE, "7"),
  /** First month of the year; blank = the regime's. */
  YEAR_STARTS("Year starts (month)", Type.WHOLE, ""),
  /** Cash or invoiced. */
  TAX_BASIS("Tax basis", Type.CHOICE, "cash", "cash", "invoiced"),
  /** The farrier's year of birth. */
  BIRTH_YEAR("Birth year", Type.WHOLE, ""),
  /** The age at which they mean to stop. */
  STOP_AGE("Stop age", Type.WHOLE, ""),
  /** Their own limit of hours a week. */
  WEEKLY_HOURS_LIMIT("Weekly hours limit", Type.DECIMAL, ""),
  /** Their own limit of hours a year. */
  YEARLY_HOURS_LIMIT("Yearly hours limit", Type.DECIMAL, ""),
  /** Their own limit of horses a day. */
  HORSES_PER_DAY_LIMIT("Horses per day limit", Type.WHOLE, ""),
  /** The day from which the register keeps balances. */
  OPENING_DATE("Opening date", Type.DATE, ""),
  /** Which structured invoices go to owners with a tax number or a buyer reference. */
  E_INVOICES("E-invoices", Type.CHOICE, "no", "no", "factur-x", "xrechnung"),
  /** What a transfer shall say: the number, or a creditor reference made of it. */
  PAYMENT_REFERENCE("Payment reference", Type.CHOICE, "number", "number", "rf"),
  /** The mail server. */
  SMTP_HOST("SMTP host", Type.TEXT, ""),
  /** Its port. */
  SMTP_PORT("SMTP port", Type.WHOLE, ""),
  /** The user there. */
  SMTP_USER("SMTP user", Type.TEXT, ""),
  /**
   * Margin after own labour that a Work should leave, per cent of its price; for the price list.
   */
  TARGET_MARGIN("Target margin %", Type.DECIMAL, "");

  /** How a setting's value is read. */
  public enum Type {
    /** Any text. */
    TEXT,
    /** A number, not negative. */
    DECIMAL,
    /** A whole number, not negative. */
    WHOLE,
    /** Yes or no. */
    YES_NO,
    /** One of the choices. */
    CHOICE,
    /** A date. */
    DATE,
    /** ISO 3166 alpha-2, or an English country name. */
    COUNTRY,
    /** ISO 4217. */
    CURRENCY,
    /** ISO 639-1, or a language's name. */
    LANGUAGE,
    /** An account's number by ISO 13616, read without its blanks. */
    IBAN
  }

  private final String title;
  private final Type type;
  private final String blank;
  private final List<String> choices;

  Setting(String title, Type type, String blank, String... choices) {
    this.title = title;
    this.type = type;
    this.blank = blank;
    this.choices = List.of(choices);
  }

  /**
   * The name in the workbook.
   *
   * @return as the farrier writes it
   */
  public String title() {
    return title;
  }

  /**
   * How its value is read.
   *
   * @return the type
   */
  public Type type() {
    return type;
  }

  /**
   * The value that a blank setting has.
   *
   * @return the default; empty where there is none or it depends on others
   */
  public String blank() {
    return blank;
  }

  /**
   * The values it may have.
   *
   * @return in lower case; empty for a setting that is no choice
   */
  public List<String> choices() {
    return choices;
  }
}
