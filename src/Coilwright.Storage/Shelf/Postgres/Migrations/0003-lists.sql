-- Lists that belong to no piece and to all of them: prices, the wire at hand. Every one that ever was stays; the last counts.
CREATE TABLE coilwright.lists (
  kind text NOT NULL CHECK (kind IN ('prices', 'wire')),
  revision bigint NOT NULL CHECK (revision >= 1),
  at timestamptz NOT NULL,
  -- The file.
  content text NOT NULL,
  PRIMARY KEY (kind, revision)
);

CREATE TRIGGER lists_are_not_changed BEFORE UPDATE OR DELETE ON coilwright.lists FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER lists_are_not_emptied BEFORE TRUNCATE ON coilwright.lists FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added();
