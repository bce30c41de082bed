-- Lists that belong to no piece and to all of them: prices, the wire at hand. Every one that ever was stays; the last counts.
CREATE TABLE lists (
  kind TEXT NOT NULL CHECK (kind IN ('prices', 'wire')),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  -- UTC, as 2026-01-31T09:30:00.0000000Z.
  at TEXT NOT NULL,
  -- The file.
  content TEXT NOT NULL,
  PRIMARY KEY (kind, revision)
) STRICT;

CREATE TRIGGER lists_are_not_changed BEFORE UPDATE ON lists BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;
CREATE TRIGGER lists_are_not_deleted BEFORE DELETE ON lists BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;

PRAGMA user_version = 3;
