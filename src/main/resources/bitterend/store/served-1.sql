-- The ledger of one loft on a PostgreSQL server, in a schema of its own, which the program makes the place of all names below.
-- Rows say what those of the file say: lengths in millimetres, masses in grams, days as 2026-03-02.
-- What a row of the file has not: the version of these tables, and the head at which the ledger was moved away; empty while
-- it is kept here.
-- One row. The identity of the ledger, when it was begun, how many events were made from an older version, how many there
-- are, and the end of the chain.
CREATE TABLE ledger (
  one BIGINT PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL,
  begun TEXT NOT NULL,
  older BIGINT NOT NULL CHECK (older >= 0),
  events BIGINT NOT NULL CHECK (events >= 0),
  head TEXT NOT NULL,
  version BIGINT NOT NULL DEFAULT 1,
  moved TEXT NOT NULL DEFAULT ''
);
CREATE TABLE event (
  number BIGINT PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  kind TEXT NOT NULL,
  note TEXT NOT NULL,
  undoes BIGINT UNIQUE REFERENCES event (number),
  hash TEXT NOT NULL
);
CREATE INDEX event_of_a_kind ON event (kind);
CREATE TABLE fact (
  event BIGINT NOT NULL REFERENCES event (number),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (event, name)
);
CREATE TABLE movement (
  number BIGINT PRIMARY KEY,
  event BIGINT NOT NULL REFERENCES event (number),
  kind TEXT NOT NULL,
  reel TEXT NOT NULL,
  count BIGINT NOT NULL CHECK (count >= 1),
  by_mm BIGINT NOT NULL,
  note TEXT NOT NULL,
  parent TEXT NOT NULL,
  plan TEXT NOT NULL,
  step TEXT NOT NULL,
  attempt BIGINT NOT NULL CHECK (attempt >= 0),
  piece TEXT NOT NULL,
  was TEXT NOT NULL,
  piece_mm BIGINT NOT NULL CHECK (piece_mm >= 0),
  undoes BIGINT UNIQUE REFERENCES movement (number),
  gone BIGINT NOT NULL CHECK (gone IN (0, 1)),
  rope TEXT NOT NULL,
  lot TEXT NOT NULL,
  length_mm BIGINT NOT NULL CHECK (length_mm > 0),
  uncertainty_mm BIGINT NOT NULL CHECK (uncertainty_mm >= 0),
  lead_trim_mm BIGINT NOT NULL CHECK (lead_trim_mm >= 0),
  inner_wraps_mm BIGINT NOT NULL CHECK (inner_wraps_mm >= 0),
  known TEXT NOT NULL,
  certificate TEXT NOT NULL,
  certificate_number TEXT NOT NULL,
  use_by TEXT,
  received TEXT,
  owner TEXT NOT NULL,
  state TEXT NOT NULL,
  for_order TEXT NOT NULL,
  is_full BIGINT NOT NULL CHECK (is_full IN (0, 1)),
  place TEXT NOT NULL,
  mass_g BIGINT NOT NULL CHECK (mass_g >= 0),
  draw TEXT NOT NULL,
  reel_note TEXT NOT NULL,
  length_text TEXT NOT NULL,
  held TEXT NOT NULL,
  UNIQUE (reel, count)
);
CREATE UNIQUE INDEX movement_of_a_step ON movement (plan, reel, step, attempt) WHERE step <> '' AND undoes IS NULL;
CREATE INDEX movement_of_a_piece ON movement (piece) WHERE piece <> '';
CREATE INDEX movement_of_an_event ON movement (event);
CREATE TABLE flaw (
  movement BIGINT NOT NULL REFERENCES movement (number),
  position BIGINT NOT NULL,
  from_mm BIGINT NOT NULL CHECK (from_mm >= 0),
  to_mm BIGINT NOT NULL CHECK (to_mm >= from_mm),
  uncertainty_mm BIGINT NOT NULL CHECK (uncertainty_mm >= 0),
  what TEXT NOT NULL,
  PRIMARY KEY (movement, position)
);
-- What was ordered when a piece was cut.
CREATE TABLE ordered (
  movement BIGINT PRIMARY KEY REFERENCES movement (number),
  order_number TEXT NOT NULL,
  line TEXT NOT NULL,
  assembly BIGINT NOT NULL,
  leg BIGINT NOT NULL,
  part TEXT NOT NULL,
  rope TEXT NOT NULL,
  finished TEXT NOT NULL,
  ends TEXT NOT NULL,
  needed_mm BIGINT NOT NULL CHECK (needed_mm >= 0),
  set_name TEXT NOT NULL,
  match TEXT NOT NULL,
  customer TEXT NOT NULL,
  due TEXT NOT NULL,
  certificate TEXT NOT NULL,
  own_rope BIGINT NOT NULL CHECK (own_rope IN (0, 1)),
  measured TEXT NOT NULL
);
CREATE FUNCTION ${schema}.row_is_not_changed() RETURNS trigger LANGUAGE plpgsql AS '
BEGIN
  RAISE EXCEPTION ''events and movements are added and never changed'';
END';
CREATE TRIGGER event_is_not_changed BEFORE UPDATE ON event FOR EACH ROW WHEN (OLD.hash <> '')
  EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER event_is_not_deleted BEFORE DELETE ON event FOR EACH ROW EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER fact_is_not_changed BEFORE UPDATE OR DELETE ON fact FOR EACH ROW
  EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER movement_is_not_changed BEFORE UPDATE OR DELETE ON movement FOR EACH ROW
  EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER flaw_is_not_changed BEFORE UPDATE OR DELETE ON flaw FOR EACH ROW
  EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER ordered_is_not_changed BEFORE UPDATE OR DELETE ON ordered FOR EACH ROW
  EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER ledger_is_not_emptied BEFORE TRUNCATE ON ledger EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER event_is_not_emptied BEFORE TRUNCATE ON event EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER fact_is_not_emptied BEFORE TRUNCATE ON fact EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER movement_is_not_emptied BEFORE TRUNCATE ON movement EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER flaw_is_not_emptied BEFORE TRUNCATE ON flaw EXECUTE FUNCTION ${schema}.row_is_not_changed();
CREATE TRIGGER ordered_is_not_emptied BEFORE TRUNCATE ON ordered EXECUTE FUNCTION ${schema}.row_is_not_changed();
