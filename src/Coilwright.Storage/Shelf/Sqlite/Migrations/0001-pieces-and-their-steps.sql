-- A piece has only a name of its own here and whether it was put away; everything else about it is in its steps.
CREATE TABLE pieces (
  id TEXT NOT NULL PRIMARY KEY,
  archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1))
) STRICT;

-- Every accepted step of every piece. Nothing is ever changed or taken out: the triggers below see to it.
CREATE TABLE steps (
  piece TEXT NOT NULL REFERENCES pieces (id),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  -- The state that whoever asked for the step had before her.
  seen INTEGER NOT NULL,
  what TEXT NOT NULL,
  -- The edit as coilwright.edit/1; null where the step was none.
  edit TEXT,
  -- UTC, as 2026-01-31T09:30:00.0000000Z: by letter is by time.
  at TEXT NOT NULL,
  title TEXT NOT NULL,
  -- The piece file of the state that the step led to, and the step that holds it: undo, redo and going back lead to a state that is there already.
  content TEXT,
  content_of INTEGER NOT NULL,
  -- The steps that undo and redo lead back to from here; null where there is nothing to take back or to take again.
  undo_to INTEGER,
  redo_to INTEGER,
  PRIMARY KEY (piece, revision),
  FOREIGN KEY (piece, content_of) REFERENCES steps (piece, revision),
  FOREIGN KEY (piece, undo_to) REFERENCES steps (piece, revision),
  FOREIGN KEY (piece, redo_to) REFERENCES steps (piece, revision),
  CHECK ((content IS NULL) = (content_of <> revision))
) STRICT;

CREATE TRIGGER steps_are_not_changed BEFORE UPDATE ON steps BEGIN SELECT RAISE(ABORT, 'steps are only ever added'); END;
CREATE TRIGGER steps_are_not_deleted BEFORE DELETE ON steps BEGIN SELECT RAISE(ABORT, 'steps are only ever added'); END;

-- Names that she gave to states.
CREATE TABLE state_names (
  piece TEXT NOT NULL,
  revision INTEGER NOT NULL,
  name TEXT NOT NULL,
  PRIMARY KEY (piece, revision),
  FOREIGN KEY (piece, revision) REFERENCES steps (piece, revision)
) STRICT;

-- What was tried on the mat.
CREATE TABLE trials (
  id TEXT NOT NULL PRIMARY KEY,
  piece TEXT NOT NULL,
  revision INTEGER NOT NULL,
  at TEXT NOT NULL,
  tried TEXT NOT NULL,
  dropped_because TEXT,
  FOREIGN KEY (piece, revision) REFERENCES steps (piece, revision)
) STRICT;

CREATE INDEX trials_of_piece ON trials (piece, at);

CREATE TABLE photos (
  trial TEXT NOT NULL PRIMARY KEY REFERENCES trials (id) ON DELETE CASCADE,
  media_type TEXT NOT NULL,
  bytes BLOB NOT NULL
) STRICT;

-- The mark by which a file is known as a shelf ("Coil"), and the number of the last script that it has seen.
PRAGMA application_id = 1131374956;
PRAGMA user_version = 1;
