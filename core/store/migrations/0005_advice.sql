-- What the shop is advised to do and what was done instead (docs/foresight.md): worth tables that were learned
-- from its orders, the suggestion for each order beside the way that was taken, and which belts may be cut
-- before anybody asks.
--
-- belt.pre_cut: 0 where it pays, 1 never, 2 always.
ALTER TABLE belt ADD COLUMN pre_cut INTEGER NOT NULL DEFAULT 0 CHECK (pre_cut BETWEEN 0 AND 2)
-- next
-- contents: the text form of core/foresight/worth_text.h; made_for: what it was fitted to, in the same words
-- for the same sleeve, widths, rules and limits.
CREATE TABLE worth_table (
    belt INTEGER PRIMARY KEY REFERENCES belt (id),
    form INTEGER NOT NULL CHECK (form > 0),
    version INTEGER NOT NULL CHECK (version > 0),
    made_ms INTEGER NOT NULL,
    orders INTEGER NOT NULL CHECK (orders >= 0),
    made_for TEXT NOT NULL,
    contents TEXT NOT NULL
) STRICT
-- next
-- basis: 0 the smallest that fits, 1 the exact plan of the order, 2 worth table and look-ahead.
-- worth_version: of the table that it rested on, 0 if there was none.
-- override_key: 0 older first, 1 nearer to hand, 2 customer saw it, 3 damaged or unsafe, 4 kept for somebody,
-- 5 other.
CREATE TABLE advice (
    id INTEGER PRIMARY KEY,
    sales_order INTEGER NOT NULL REFERENCES sales_order (id),
    belt INTEGER NOT NULL REFERENCES belt (id),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    basis INTEGER NOT NULL CHECK (basis BETWEEN 0 AND 2),
    worth_version INTEGER NOT NULL CHECK (worth_version >= 0),
    shelf_declined INTEGER NOT NULL CHECK (shelf_declined IN (0, 1)),
    overridden INTEGER NOT NULL CHECK (overridden IN (0, 1)),
    override_key INTEGER CHECK (override_key BETWEEN 0 AND 5),
    override_words TEXT NOT NULL,
    CHECK (overridden = 1 OR override_key IS NULL)
) STRICT
-- next
CREATE INDEX advice_by_order ON advice (sales_order)
-- next
CREATE INDEX advice_by_time ON advice (at_ms)
-- next
-- which: 0 suggested, 1 taken. Costs and worth are expectations in the belt's unit (micrometres or ribs), so
-- they may be fractions; money is what the cost comes to at the price of the belt's sleeve on that day.
CREATE TABLE advice_way (
    advice INTEGER NOT NULL REFERENCES advice (id) ON DELETE CASCADE,
    which INTEGER NOT NULL CHECK (which IN (0, 1)),
    cost REAL NOT NULL,
    cost_money INTEGER NOT NULL,
    worth_left REAL NOT NULL,
    sleeves_opened INTEGER NOT NULL CHECK (sleeves_opened >= 0),
    from_shelf INTEGER NOT NULL CHECK (from_shelf >= 0),
    PRIMARY KEY (advice, which)
) STRICT, WITHOUT ROWID
-- next
-- One row a mounting of the way.
CREATE TABLE advice_piece (
    advice INTEGER NOT NULL,
    which INTEGER NOT NULL,
    position INTEGER NOT NULL,
    piece INTEGER NOT NULL REFERENCES piece (id),
    left_over INTEGER NOT NULL CHECK (left_over >= 0),
    PRIMARY KEY (advice, which, position),
    FOREIGN KEY (advice, which) REFERENCES advice_way (advice, which) ON DELETE CASCADE
) STRICT, WITHOUT ROWID
-- next
-- Ready belts that the way cuts for the shelf.
CREATE TABLE advice_shelf (
    advice INTEGER NOT NULL,
    which INTEGER NOT NULL,
    extent INTEGER NOT NULL CHECK (extent > 0),
    belts INTEGER NOT NULL CHECK (belts > 0),
    PRIMARY KEY (advice, which, extent),
    FOREIGN KEY (advice, which) REFERENCES advice_way (advice, which) ON DELETE CASCADE
) STRICT, WITHOUT ROWID
