CREATE TABLE mail (
  owner TEXT NOT NULL,
  period TEXT NOT NULL,
  documents TEXT NOT NULL,
  state TEXT NOT NULL
    CHECK (state IN ('intended', 'handed over', 'delivered', 'refused', 'unsure')),
  reason TEXT NOT NULL,
  run TEXT NOT NULL,
  PRIMARY KEY (owner, period, documents)
) WITHOUT ROWID;
