-- What was made and everything that happened to it since, in the order of their places. Nothing is ever changed or taken out: the triggers below see to it.
CREATE TABLE made_steps (
  place INTEGER NOT NULL PRIMARY KEY,
  -- Made by whoever asked, a UUIDv7: given twice, it counts once.
  id TEXT NOT NULL UNIQUE,
  -- The record: the id of the step by which it was made.
  made TEXT NOT NULL REFERENCES made_steps (id),
  kind TEXT NOT NULL CHECK (kind IN ('make', 'ask', 'sell', 'give', 'come-back', 'mend', 'lose', 'take-apart', 'pack', 'unpack', 'take-back', 'erase')),
  -- The day she says, as 2026-01-31.
  day TEXT NOT NULL,
  -- UTC, as 2026-01-31T09:30:00.0000000Z.
  at TEXT NOT NULL,
  -- The record's number, from 1.
  number INTEGER UNIQUE CHECK (number >= 1),
  -- The state that it was strung from. States stay, and so does the order as it was strung.
  piece TEXT,
  revision INTEGER,
  -- What the step says, in JSON; whom it names is elsewhere.
  content TEXT NOT NULL,
  FOREIGN KEY (piece, revision) REFERENCES steps (piece, revision),
  CHECK ((kind = 'make') = (made = id)),
  CHECK ((kind = 'make') = (number IS NOT NULL)),
  CHECK ((piece IS NULL) = (revision IS NULL))
) STRICT;

CREATE INDEX made_steps_of_record ON made_steps (made, place);

CREATE TRIGGER made_steps_are_not_changed BEFORE UPDATE ON made_steps BEGIN SELECT RAISE(ABORT, 'the book is only ever added to'); END;
CREATE TRIGGER made_steps_are_not_deleted BEFORE DELETE ON made_steps BEGIN SELECT RAISE(ABORT, 'the book is only ever added to'); END;

-- Whom a step names and what was noted. The one part of the book that can be taken out: people may ask for it.
CREATE TABLE made_people (
  step TEXT NOT NULL PRIMARY KEY REFERENCES made_steps (id),
  who TEXT,
  note TEXT
) STRICT;

CREATE TRIGGER made_people_are_not_changed BEFORE UPDATE ON made_people BEGIN SELECT RAISE(ABORT, 'names are only added or erased'); END;

PRAGMA user_version = 5;
