-- The tray: kinds of beads, each as every change left it. The last of a key counts; one without content was taken out. Nothing is ever changed or deleted: the triggers see to it.
CREATE TABLE tray_changes (
  revision INTEGER NOT NULL PRIMARY KEY CHECK (revision >= 1),
  -- UTC, as 2026-01-31T09:30:00.0000000Z.
  at TEXT NOT NULL
) STRICT;

CREATE TABLE tray_kinds (
  key TEXT NOT NULL,
  revision INTEGER NOT NULL REFERENCES tray_changes (revision),
  -- The bead in JSON, as in a piece file.
  content TEXT,
  drawer TEXT,
  PRIMARY KEY (key, revision)
) STRICT, WITHOUT ROWID;

CREATE INDEX tray_kinds_of_change ON tray_kinds (revision);

CREATE TRIGGER tray_changes_are_not_changed BEFORE UPDATE ON tray_changes BEGIN SELECT RAISE(ABORT, 'the tray is only ever added to'); END;
CREATE TRIGGER tray_changes_are_not_deleted BEFORE DELETE ON tray_changes BEGIN SELECT RAISE(ABORT, 'the tray is only ever added to'); END;
CREATE TRIGGER tray_kinds_are_not_changed BEFORE UPDATE ON tray_kinds BEGIN SELECT RAISE(ABORT, 'the tray is only ever added to'); END;
CREATE TRIGGER tray_kinds_are_not_deleted BEFORE DELETE ON tray_kinds BEGIN SELECT RAISE(ABORT, 'the tray is only ever added to'); END;

PRAGMA user_version = 6;
