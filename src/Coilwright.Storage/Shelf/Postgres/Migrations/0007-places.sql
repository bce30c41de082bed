-- How far a stringing has come moves with every step and nobody asks where it was before: the one list that is put in the place of the one before it.
DROP TRIGGER lists_are_not_changed ON coilwright.lists;

DELETE FROM coilwright.lists WHERE kind = 'places' AND revision < (SELECT max(revision) FROM coilwright.lists WHERE kind = 'places');

CREATE TRIGGER lists_are_not_changed BEFORE UPDATE ON coilwright.lists FOR EACH ROW WHEN (OLD.kind <> 'places' OR NEW.kind <> 'places') EXECUTE FUNCTION coilwright.only_ever_added();
CREATE TRIGGER lists_are_not_deleted BEFORE DELETE ON coilwright.lists FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added();
