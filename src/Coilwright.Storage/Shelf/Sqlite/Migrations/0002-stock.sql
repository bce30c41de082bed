-- What is kept in drawers, and what it is counted in, which stays the same.
CREATE TABLE stock_items (
  key TEXT NOT NULL PRIMARY KEY,
  counted_in TEXT NOT NULL CHECK (counted_in IN ('each', 'mm', 'g'))
) STRICT;

-- How it was described, each time anew; the last counts.
CREATE TABLE stock_descriptions (
  item TEXT NOT NULL REFERENCES stock_items (key),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  at TEXT NOT NULL,
  name TEXT NOT NULL,
  -- A list of texts in JSON.
  aliases TEXT NOT NULL,
  -- The bead as in a piece file; null for what is none.
  bead TEXT,
  -- Thousandths of what it is counted in, as every quantity here.
  par INTEGER CHECK (par >= 0),
  PRIMARY KEY (item, revision)
) STRICT;

-- Every movement that was accepted, in the order of their numbers. Nothing is ever changed or taken out: the triggers below see to it.
CREATE TABLE stock_movements (
  number INTEGER NOT NULL PRIMARY KEY,
  -- Made by whoever asked, a UUIDv7: given twice, it counts once.
  id TEXT NOT NULL UNIQUE,
  item TEXT NOT NULL REFERENCES stock_items (key),
  kind TEXT NOT NULL CHECK (kind IN ('receive', 'use', 'reserve', 'release', 'recount', 'return')),
  -- UTC, as 2026-01-31T09:30:00.0000000Z.
  at TEXT NOT NULL,
  -- What came, went, was kept back or was counted; null for a release, which is of all that is left.
  quantity INTEGER CHECK (quantity >= 0),
  -- The lot and the reservation that were named.
  lot TEXT REFERENCES stock_lots (id),
  reservation TEXT REFERENCES stock_movements (id),
  what_for TEXT,
  CHECK ((quantity IS NULL) = (kind = 'release'))
) STRICT;

CREATE INDEX stock_movements_of_item ON stock_movements (item, number);

-- What is known of a lot beside its quantity. It has the id of the movement by which it came.
CREATE TABLE stock_lots (
  id TEXT NOT NULL PRIMARY KEY REFERENCES stock_movements (id),
  supplier TEXT,
  supplier_number TEXT,
  drawer TEXT,
  -- The day, as 2026-01-31.
  received TEXT,
  -- Ten-thousandths of the currency.
  cost INTEGER CHECK (cost >= 0),
  currency TEXT,
  CHECK ((cost IS NULL) = (currency IS NULL))
) STRICT;

-- By how much a movement changed what is on hand of each lot.
CREATE TABLE stock_changes (
  movement TEXT NOT NULL REFERENCES stock_movements (id),
  -- The order in which the lots were gone through.
  place INTEGER NOT NULL,
  lot TEXT NOT NULL REFERENCES stock_lots (id),
  changed_by INTEGER NOT NULL CHECK (changed_by <> 0),
  PRIMARY KEY (movement, place)
) STRICT;

CREATE INDEX stock_changes_of_lot ON stock_changes (lot);

CREATE TRIGGER stock_items_are_not_changed BEFORE UPDATE ON stock_items BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_items_are_not_deleted BEFORE DELETE ON stock_items BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_descriptions_are_not_changed BEFORE UPDATE ON stock_descriptions BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_descriptions_are_not_deleted BEFORE DELETE ON stock_descriptions BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_movements_are_not_changed BEFORE UPDATE ON stock_movements BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_movements_are_not_deleted BEFORE DELETE ON stock_movements BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_lots_are_not_changed BEFORE UPDATE ON stock_lots BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_lots_are_not_deleted BEFORE DELETE ON stock_lots BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_changes_are_not_changed BEFORE UPDATE ON stock_changes BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;
CREATE TRIGGER stock_changes_are_not_deleted BEFORE DELETE ON stock_changes BEGIN SELECT RAISE(ABORT, 'stock is only ever added to'); END;

-- The program decides before it writes; whoever writes past it is stopped here.
CREATE TRIGGER stock_lots_are_not_overdrawn BEFORE INSERT ON stock_changes
WHEN new.changed_by + (SELECT coalesce(sum(changed_by), 0) FROM stock_changes WHERE lot = new.lot) < 0
BEGIN SELECT RAISE(ABORT, 'a lot is never below nought'); END;

PRAGMA user_version = 2;
