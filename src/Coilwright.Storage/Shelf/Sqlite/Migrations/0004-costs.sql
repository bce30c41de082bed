-- What the studio's work costs is kept beside prices and wire. Which kinds of lists there are is the program's: the next one needs no other table.
DROP TRIGGER lists_are_not_changed;
DROP TRIGGER lists_are_not_deleted;
ALTER TABLE lists RENAME TO lists_before;

CREATE TABLE lists (
  kind TEXT NOT NULL CHECK (kind <> ''),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  -- UTC, as 2026-01-31T09:30:00.0000000Z.
  at TEXT NOT NULL,
  -- The file.
  content TEXT NOT NULL,
  PRIMARY KEY (kind, revision)
) STRICT;

INSERT INTO lists (kind, revision, at, content) SELECT kind, revision, at, content FROM lists_before;
DROP TABLE lists_before;

CREATE TRIGGER lists_are_not_changed BEFORE UPDATE ON lists BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;
CREATE TRIGGER lists_are_not_deleted BEFORE DELETE ON lists BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;

PRAGMA user_version = 4;
