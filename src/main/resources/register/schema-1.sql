CREATE TABLE document (
  number TEXT NOT NULL PRIMARY KEY,
  series TEXT NOT NULL,
  sequence INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('INVOICE', 'CREDIT_NOTE')),
  owner TEXT NOT NULL,
  month TEXT NOT NULL,
  date TEXT NOT NULL,
  due TEXT NOT NULL,
  corrects TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('DRAFT', 'ISSUED', 'DELIVERED', 'VOID')),
  net TEXT NOT NULL,
  tax TEXT NOT NULL,
  gross TEXT NOT NULL,
  version INTEGER NOT NULL,
  pdf BLOB,
  UNIQUE (series, sequence)
);
CREATE TABLE line (
  number TEXT NOT NULL REFERENCES document (number),
  version INTEGER NOT NULL,
  position INTEGER NOT NULL,
  visit_date TEXT NOT NULL,
  visit_horse TEXT NOT NULL,
  visit_work TEXT NOT NULL,
  visit_occurrence INTEGER NOT NULL,
  own TEXT NOT NULL,
  sheet TEXT NOT NULL,
  row INTEGER NOT NULL,
  horse TEXT NOT NULL,
  work TEXT NOT NULL,
  kind TEXT NOT NULL,
  part TEXT NOT NULL,
  item TEXT NOT NULL,
  count INTEGER NOT NULL,
  shoeing TEXT NOT NULL,
  reason TEXT NOT NULL,
  share_percent TEXT NOT NULL,
  discount_percent TEXT NOT NULL,
  amount TEXT NOT NULL,
  net TEXT NOT NULL,
  tax_code TEXT NOT NULL,
  tax_name TEXT NOT NULL,
  tax_rate TEXT NOT NULL,
  tax_exempt INTEGER NOT NULL,
  tax_included INTEGER NOT NULL,
  PRIMARY KEY (number, version, position)
);
CREATE TABLE tax_total (
  number TEXT NOT NULL REFERENCES document (number),
  version INTEGER NOT NULL,
  position INTEGER NOT NULL,
  code TEXT NOT NULL,
  name TEXT NOT NULL,
  rate TEXT NOT NULL,
  net TEXT NOT NULL,
  tax TEXT NOT NULL,
  PRIMARY KEY (number, version, position)
);
CREATE TABLE state_change (
  position INTEGER PRIMARY KEY AUTOINCREMENT,
  number TEXT NOT NULL REFERENCES document (number),
  version INTEGER NOT NULL,
  state TEXT NOT NULL
);
CREATE TABLE payment_seen (
  date TEXT NOT NULL,
  owner TEXT NOT NULL,
  amount TEXT NOT NULL,
  invoice TEXT NOT NULL,
  kind TEXT NOT NULL,
  reference TEXT NOT NULL,
  occurrence INTEGER NOT NULL,
  PRIMARY KEY (date, owner, amount, invoice, kind, reference, occurrence)
);
