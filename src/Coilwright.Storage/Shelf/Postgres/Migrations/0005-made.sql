-- What was made and everything that happened to it since. Whoever writes takes turns, so a later step has a greater place. Nothing is ever changed or taken out.
CREATE TABLE coilwright.made_steps (
  place bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  -- Made by whoever asked, a UUIDv7: given twice, it counts once.
  id uuid NOT NULL UNIQUE,
  -- The record: the id of the step by which it was made.
  made uuid NOT NULL REFERENCES coilwright.made_steps (id),
  kind text NOT NULL CHECK (kind IN ('make', 'ask', 'sell', 'give', 'come-back', 'mend', 'lose', 'take-apart', 'pack', 'unpack', 'take-back', 'erase')),
  -- The day she says.
  day date NOT NULL,
  at timestamptz NOT NULL,
  -- The record's number, from 1.
  number bigint UNIQUE CHECK (number >= 1),
  -- The state that it was strung from. States stay, and so does the order as it was strung.
  piece uuid,
  revision bigint,
  -- What the step says, in JSON; whom it names is elsewhere.
  content text NOT NULL,
  FOREIGN KEY (piece, revision) REFERENCES coilwright.steps (piece, revision),
  CHECK ((kind = 'make') = (made = id)),
  CHECK ((kind = 'make') = (number IS NOT NULL)),
  CHECK ((piece IS NULL) = (revision IS NULL))
);

CREATE INDEX made_steps_of_record ON coilwright.made_steps (made, place);

CREATE TRIGGER made_steps_are_not_changed BEFORE UPDATE OR DELETE ON coilwright.made_steps FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER made_steps_are_not_emptied BEFORE TRUNCATE ON coilwright.made_steps FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added();

-- Whom a step names and what was noted. The one part of the book that can be taken out: people may ask for it.
CREATE TABLE coilwright.made_people (
  step uuid NOT NULL PRIMARY KEY REFERENCES coilwright.made_steps (id),
  who text,
  note text
);

CREATE TRIGGER made_people_are_not_changed BEFORE UPDATE ON coilwright.made_people FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
