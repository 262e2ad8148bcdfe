-- What was learned about reel types by gauging a reel of known length: the share of the whole-turn figure that is there.
CREATE TABLE gauged (
  number INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  reel_type TEXT NOT NULL,
  known_mm INTEGER NOT NULL CHECK (known_mm > 0),
  turns_mm INTEGER NOT NULL CHECK (turns_mm > 0)
) STRICT;
