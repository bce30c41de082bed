-- What is kept in drawers, and what it is counted in, which stays the same.
CREATE TABLE coilwright.stock_items (
  key text NOT NULL PRIMARY KEY,
  counted_in text NOT NULL CHECK (counted_in IN ('each', 'mm', 'g'))
);

-- How it was described, each time anew; the last counts.
CREATE TABLE coilwright.stock_descriptions (
  item text NOT NULL REFERENCES coilwright.stock_items (key),
  revision bigint NOT NULL CHECK (revision >= 1),
  at timestamptz NOT NULL,
  name text NOT NULL,
  -- A list of texts in JSON.
  aliases text NOT NULL,
  -- The bead as in a piece file; null for what is none.
  bead text,
  -- Thousandths of what it is counted in, as every quantity here.
  par bigint CHECK (par >= 0),
  PRIMARY KEY (item, revision)
);

-- Every movement that was accepted. Whoever writes stock takes turns, so a later one has a greater number. Nothing is ever changed or taken out: the triggers below
-- see to it.
CREATE TABLE coilwright.stock_movements (
  number bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  -- Made by whoever asked, a UUIDv7: given twice, it counts once.
  id uuid NOT NULL UNIQUE,
  item text NOT NULL REFERENCES coilwright.stock_items (key),
  kind text NOT NULL CHECK (kind IN ('receive', 'use', 'reserve', 'release', 'recount', 'return')),
  at timestamptz NOT NULL,
  -- What came, went, was kept back or was counted; null for a release, which is of all that is left.
  quantity bigint CHECK (quantity >= 0),
  -- The lot and the reservation that were named.
  lot uuid,
  reservation uuid REFERENCES coilwright.stock_movements (id),
  what_for text,
  CHECK ((quantity IS NULL) = (kind = 'release'))
);

CREATE INDEX stock_movements_of_item ON coilwright.stock_movements (item, number);

-- What is known of a lot beside its quantity. It has the id of the movement by which it came.
CREATE TABLE coilwright.stock_lots (
  id uuid NOT NULL PRIMARY KEY REFERENCES coilwright.stock_movements (id),
  supplier text,
  supplier_number text,
  drawer text,
  received date,
  -- Ten-thousandths of the currency.
  cost bigint CHECK (cost >= 0),
  currency text,
  CHECK ((cost IS NULL) = (currency IS NULL))
);

ALTER TABLE coilwright.stock_movements ADD FOREIGN KEY (lot) REFERENCES coilwright.stock_lots (id);

-- By how much a movement changed what is on hand of each lot.
CREATE TABLE coilwright.stock_changes (
  movement uuid NOT NULL REFERENCES coilwright.stock_movements (id),
  -- The order in which the lots were gone through.
  place integer NOT NULL,
  lot uuid NOT NULL REFERENCES coilwright.stock_lots (id),
  changed_by bigint NOT NULL CHECK (changed_by <> 0),
  PRIMARY KEY (movement, place)
);

CREATE INDEX stock_changes_of_lot ON coilwright.stock_changes (lot);

DO $$
DECLARE held text;
BEGIN
  FOREACH held IN ARRAY ARRAY['stock_items', 'stock_descriptions', 'stock_movements', 'stock_lots', 'stock_changes'] LOOP
    EXECUTE format('CREATE TRIGGER %I BEFORE UPDATE OR DELETE ON coilwright.%I FOR EACH ROW EXECUTE FUNCTION coilwright.only_ever_added()', held || '_are_not_changed', held);
    EXECUTE format('CREATE TRIGGER %I BEFORE TRUNCATE ON coilwright.%I FOR EACH STATEMENT EXECUTE FUNCTION coilwright.only_ever_added()', held || '_are_not_emptied', held);
  END LOOP;
END $$;

-- The program decides before it writes; whoever writes past it is stopped here. The lot is locked, so that what is summed is all there is.
CREATE FUNCTION coilwright.never_below_nought() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  PERFORM 1 FROM coilwright.stock_lots WHERE id = NEW.lot FOR UPDATE;
  IF NEW.changed_by + (SELECT coalesce(sum(changed_by), 0) FROM coilwright.stock_changes WHERE lot = NEW.lot) < 0 THEN
    RAISE EXCEPTION 'a lot is never below nought' USING ERRCODE = 'check_violation';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER stock_lots_are_not_overdrawn BEFORE INSERT ON coilwright.stock_changes FOR EACH ROW EXECUTE FUNCTION coilwright.never_below_nought();
