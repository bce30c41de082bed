-- A piece has only a name of its own here and whether it was put away; everything else about it is in its steps. Whoever takes a step locks this row.
CREATE TABLE coilwright.pieces (
  id uuid NOT NULL PRIMARY KEY,
  archived boolean NOT NULL DEFAULT false
);

-- Every accepted step of every piece. Nothing is ever changed or taken out: the triggers below see to it.
CREATE TABLE coilwright.steps (
  piece uuid NOT NULL REFERENCES coilwright.pieces (id),
  revision bigint NOT NULL CHECK (revision >= 1),
  -- A name of the step's own: a program that lost its connection while it kept a step finds out by it whether the step is there.
  mark uuid NOT NULL UNIQUE,
  -- The state that whoever asked for the step had before her.
  seen bigint NOT NULL,
  what text NOT NULL,
  -- The edit as coilwright.edit/1; null where the step was none.
  edit text,
  at timestamptz NOT NULL,
  title text NOT NULL,
  -- The piece file of the state that the step led to, and the step that holds it: undo, redo and going back lead to a state that is there already.
  content text,
  content_of bigint NOT NULL,
  -- The steps that undo and redo lead back to from here; null where there is nothing to take back or to take again.
  undo_to bigint,
  redo_to bigint,
  PRIMARY KEY (piece, revision),
  FOREIGN KEY (piece, content_of) REFERENCES coilwright.steps (piece, revision),
  FOREIGN KEY (piece, undo_to) REFERENCES coilwright.steps (piece, revision),
  FOREIGN KEY (piece, redo_to) REFERENCES coilwright.steps (piece, revision),
  CHECK ((content IS NULL) = (content_of <> revision))
);

CREATE FUNCTION coilwright.only_ever_added() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  RAISE EXCEPTION '% are only ever added', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;

CREATE TRIGGER steps_are_not_changed BEFORE UPDATE OR DELETE ON coilwright.steps
  FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER steps_are_not_emptied BEFORE TRUNCATE ON coilwright.steps
  FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added();

-- Names that she gave to states.
CREATE TABLE coilwright.state_names (
  piece uuid NOT NULL,
  revision bigint NOT NULL,
  name text NOT NULL,
  PRIMARY KEY (piece, revision),
  FOREIGN KEY (piece, revision) REFERENCES coilwright.steps (piece, revision)
);

-- What was tried on the mat.
CREATE TABLE coilwright.trials (
  id uuid NOT NULL PRIMARY KEY,
  piece uuid NOT NULL,
  revision bigint NOT NULL,
  at timestamptz NOT NULL,
  tried text NOT NULL,
  dropped_because text,
  FOREIGN KEY (piece, revision) REFERENCES coilwright.steps (piece, revision)
);

CREATE INDEX trials_of_piece ON coilwright.trials (piece, at);

CREATE TABLE coilwright.photos (
  trial uuid NOT NULL PRIMARY KEY REFERENCES coilwright.trials (id) ON DELETE CASCADE,
  media_type text NOT NULL,
  bytes bytea NOT NULL
);
