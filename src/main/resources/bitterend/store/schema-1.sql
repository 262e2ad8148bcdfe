-- Movements are added and never changed. Lengths in millimetres, masses in grams, days as 2026-03-02.
CREATE TABLE movement (
  number INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  kind TEXT NOT NULL,
  reel TEXT NOT NULL,
  count INTEGER NOT NULL CHECK (count >= 1),
  by_mm INTEGER NOT NULL,
  note TEXT NOT NULL,
  parent TEXT NOT NULL,
  plan TEXT NOT NULL,
  step TEXT NOT NULL,
  attempt INTEGER NOT NULL CHECK (attempt >= 0),
  piece TEXT NOT NULL,
  undoes INTEGER UNIQUE REFERENCES movement (number),
  gone INTEGER NOT NULL CHECK (gone IN (0, 1)),
  rope TEXT NOT NULL,
  lot TEXT NOT NULL,
  length_mm INTEGER NOT NULL CHECK (length_mm > 0),
  uncertainty_mm INTEGER NOT NULL CHECK (uncertainty_mm >= 0),
  lead_trim_mm INTEGER NOT NULL CHECK (lead_trim_mm >= 0),
  inner_wraps_mm INTEGER NOT NULL CHECK (inner_wraps_mm >= 0),
  known TEXT NOT NULL,
  certificate TEXT NOT NULL,
  certificate_number TEXT NOT NULL,
  use_by TEXT,
  received TEXT,
  owner TEXT NOT NULL,
  state TEXT NOT NULL,
  for_order TEXT NOT NULL,
  is_full INTEGER NOT NULL CHECK (is_full IN (0, 1)),
  place TEXT NOT NULL,
  mass_g INTEGER NOT NULL CHECK (mass_g >= 0),
  draw TEXT NOT NULL,
  UNIQUE (reel, count)
) STRICT;
CREATE UNIQUE INDEX movement_of_a_step ON movement (plan, reel, step, attempt) WHERE step <> '' AND undoes IS NULL;
CREATE INDEX movement_of_a_piece ON movement (piece) WHERE piece <> '';
CREATE TABLE flaw (
  movement INTEGER NOT NULL REFERENCES movement (number),
  position INTEGER NOT NULL,
  from_mm INTEGER NOT NULL CHECK (from_mm >= 0),
  to_mm INTEGER NOT NULL CHECK (to_mm >= from_mm),
  uncertainty_mm INTEGER NOT NULL CHECK (uncertainty_mm >= 0),
  what TEXT NOT NULL,
  PRIMARY KEY (movement, position)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER movement_is_not_changed BEFORE UPDATE ON movement BEGIN
  SELECT RAISE(ABORT, 'movements are added and never changed');
END;
CREATE TRIGGER movement_is_not_deleted BEFORE DELETE ON movement BEGIN
  SELECT RAISE(ABORT, 'movements are added and never deleted');
END;
CREATE TRIGGER flaw_is_not_changed BEFORE UPDATE ON flaw BEGIN
  SELECT RAISE(ABORT, 'movements are added and never changed');
END;
CREATE TRIGGER flaw_is_not_deleted BEFORE DELETE ON flaw BEGIN
  SELECT RAISE(ABORT, 'movements are added and never deleted');
END;
