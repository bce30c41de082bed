-- The tray: kinds of beads, each as every change left it. The last of a key counts; one without content was taken out. Nothing is ever changed or deleted.
CREATE TABLE coilwright.tray_changes (
  revision bigint PRIMARY KEY CHECK (revision >= 1),
  -- By which a change is known whose answer was lost.
  mark uuid NOT NULL UNIQUE,
  at timestamptz NOT NULL
);

CREATE TABLE coilwright.tray_kinds (
  key text COLLATE "C" NOT NULL,
  revision bigint NOT NULL REFERENCES coilwright.tray_changes (revision),
  -- The bead in JSON, as in a piece file.
  content text,
  drawer text,
  PRIMARY KEY (key, revision)
);

CREATE INDEX tray_kinds_of_change ON coilwright.tray_kinds (revision);

CREATE TRIGGER tray_changes_are_not_changed BEFORE UPDATE OR DELETE ON coilwright.tray_changes FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER tray_changes_are_not_emptied BEFORE TRUNCATE ON coilwright.tray_changes FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER tray_kinds_are_not_changed BEFORE UPDATE OR DELETE ON coilwright.tray_kinds FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER tray_kinds_are_not_emptied BEFORE TRUNCATE ON coilwright.tray_kinds FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added();
