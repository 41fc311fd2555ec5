ALTER TABLE line ADD COLUMN tax_kind TEXT NOT NULL DEFAULT '';
ALTER TABLE line ADD COLUMN tax_reason TEXT NOT NULL DEFAULT '';
UPDATE line SET tax_kind = CASE
  WHEN tax_code = '' THEN 'OUTSIDE_SCOPE'
  WHEN CAST(tax_rate AS REAL) = 0 THEN 'ZERO'
  ELSE 'STANDARD' END;
ALTER TABLE tax_total ADD COLUMN category TEXT NOT NULL DEFAULT '';
ALTER TABLE tax_total ADD COLUMN reason TEXT NOT NULL DEFAULT '';
UPDATE tax_total SET category = CASE
  WHEN code = '' THEN 'O'
  WHEN CAST(rate AS REAL) = 0 THEN 'Z'
  WHEN EXISTS (SELECT 1 FROM line WHERE line.number = tax_total.number
    AND line.version = tax_total.version AND line.tax_code = tax_total.code
    AND line.tax_exempt = 1) THEN 'E'
  ELSE 'S' END;
UPDATE tax_total SET rate = '0' WHERE category = 'E';
CREATE TABLE e_invoice (
  number TEXT NOT NULL PRIMARY KEY REFERENCES document (number),
  xml BLOB NOT NULL
);
