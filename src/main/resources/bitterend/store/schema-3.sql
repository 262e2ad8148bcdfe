-- Events: what one command booked. Movements belong to one; their older form is made into events by the program.
DROP TRIGGER movement_is_not_changed;
DROP TRIGGER movement_is_not_deleted;
DROP TRIGGER flaw_is_not_changed;
DROP TRIGGER flaw_is_not_deleted;
DROP INDEX movement_of_a_step;
DROP INDEX movement_of_a_piece;
ALTER TABLE flaw RENAME TO older_flaw;
ALTER TABLE movement RENAME TO older_movement;
ALTER TABLE gauged RENAME TO older_gauged;
-- One row. The identity of the ledger, when it was begun, how many events were made from an older version, how many there
-- are, and the end of the chain.
CREATE TABLE ledger (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL,
  begun TEXT NOT NULL,
  older INTEGER NOT NULL CHECK (older >= 0),
  events INTEGER NOT NULL CHECK (events >= 0),
  head TEXT NOT NULL
) STRICT;
CREATE TABLE event (
  number INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  kind TEXT NOT NULL,
  note TEXT NOT NULL,
  undoes INTEGER UNIQUE REFERENCES event (number),
  hash TEXT NOT NULL
) STRICT;
CREATE INDEX event_of_a_kind ON event (kind);
CREATE TABLE fact (
  event INTEGER NOT NULL REFERENCES event (number),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (event, name)
) STRICT, WITHOUT ROWID;
CREATE TABLE movement (
  number INTEGER PRIMARY KEY,
  event INTEGER NOT NULL REFERENCES event (number),
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
  was TEXT NOT NULL,
  piece_mm INTEGER NOT NULL CHECK (piece_mm >= 0),
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
  reel_note TEXT NOT NULL,
  UNIQUE (reel, count)
) STRICT;
CREATE UNIQUE INDEX movement_of_a_step ON movement (plan, reel, step, attempt) WHERE step <> '' AND undoes IS NULL;
CREATE INDEX movement_of_a_piece ON movement (piece) WHERE piece <> '';
CREATE INDEX movement_of_an_event ON movement (event);
CREATE TABLE flaw (
  movement INTEGER NOT NULL REFERENCES movement (number),
  position INTEGER NOT NULL,
  from_mm INTEGER NOT NULL CHECK (from_mm >= 0),
  to_mm INTEGER NOT NULL CHECK (to_mm >= from_mm),
  uncertainty_mm INTEGER NOT NULL CHECK (uncertainty_mm >= 0),
  what TEXT NOT NULL,
  PRIMARY KEY (movement, position)
) STRICT, WITHOUT ROWID;
-- What was ordered when a piece was cut.
CREATE TABLE ordered (
  movement INTEGER PRIMARY KEY REFERENCES movement (number),
  order_number TEXT NOT NULL,
  line TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  leg INTEGER NOT NULL,
  part TEXT NOT NULL,
  rope TEXT NOT NULL,
  finished TEXT NOT NULL,
  ends TEXT NOT NULL,
  needed_mm INTEGER NOT NULL CHECK (needed_mm >= 0),
  set_name TEXT NOT NULL,
  match TEXT NOT NULL,
  customer TEXT NOT NULL,
  due TEXT NOT NULL
) STRICT;
CREATE TRIGGER event_is_not_changed BEFORE UPDATE ON event WHEN OLD.hash <> '' BEGIN
  SELECT RAISE(ABORT, 'events are added and never changed');
END;
CREATE TRIGGER event_is_not_deleted BEFORE DELETE ON event BEGIN
  SELECT RAISE(ABORT, 'events are added and never deleted');
END;
CREATE TRIGGER fact_is_not_changed BEFORE UPDATE ON fact BEGIN
  SELECT RAISE(ABORT, 'events are added and never changed');
END;
CREATE TRIGGER fact_is_not_deleted BEFORE DELETE ON fact BEGIN
  SELECT RAISE(ABORT, 'events are added and never deleted');
END;
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
CREATE TRIGGER ordered_is_not_changed BEFORE UPDATE ON ordered BEGIN
  SELECT RAISE(ABORT, 'movements are added and never changed');
END;
CREATE TRIGGER ordered_is_not_deleted BEFORE DELETE ON ordered BEGIN
  SELECT RAISE(ABORT, 'movements are added and never deleted');
END;
