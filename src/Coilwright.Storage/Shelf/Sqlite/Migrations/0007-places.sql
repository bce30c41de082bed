-- How far a stringing has come moves with every step and nobody asks where it was before: the one list that is put in the place of the one before it.
DROP TRIGGER lists_are_not_changed;
DROP TRIGGER lists_are_not_deleted;

DELETE FROM lists WHERE kind = 'places' AND revision < (SELECT max(revision) FROM lists WHERE kind = 'places');

CREATE TRIGGER lists_are_not_changed BEFORE UPDATE ON lists WHEN OLD.kind <> 'places' OR NEW.kind <> 'places' BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;
CREATE TRIGGER lists_are_not_deleted BEFORE DELETE ON lists BEGIN SELECT RAISE(ABORT, 'lists are only ever added'); END;

PRAGMA user_version = 7;
