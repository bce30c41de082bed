-- What the studio's work costs is kept beside prices and wire. Which kinds of lists there are is the program's: the next one needs no other table.
ALTER TABLE coilwright.lists DROP CONSTRAINT lists_kind_check, ADD CONSTRAINT lists_kind_check CHECK (kind <> '');
