-- What a shop has: its settings and people, its belts, its pieces and where they lie.
--
-- Widths are whole micrometres of toothed belts and whole ribs of ribbed belts (belt.unit), lengths whole
-- nanometres, money whole minor units, days are counted from 1970-01-01. Codes of states and kinds are the
-- values of the enumerations in the headers beside; landed values never change their meaning.
-- Files are taken apart at the lines that say "next": QSQLITE takes one statement at a time.
CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT
-- next
CREATE TABLE price_step (
    from_belts INTEGER PRIMARY KEY CHECK (from_belts > 0),
    off_permille INTEGER NOT NULL CHECK (off_permille BETWEEN 0 AND 1000)
) STRICT
-- next
-- Millimetres: geometry of the machine, never stock.
CREATE TABLE cutter_shaft (
    position INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    diameter_driven REAL NOT NULL,
    diameter_tension REAL NOT NULL,
    usable REAL NOT NULL,
    closest REAL NOT NULL,
    farthest REAL NOT NULL
) STRICT
-- next
CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    initials TEXT NOT NULL UNIQUE CHECK (initials <> ''),
    name TEXT NOT NULL,
    role INTEGER NOT NULL CHECK (role BETWEEN 0 AND 2)
) STRICT
-- next
-- The number that the next code of each kind begins to look from (core/measure/code.h).
CREATE TABLE code_counter (
    kind INTEGER PRIMARY KEY CHECK (kind BETWEEN 0 AND 2),
    next INTEGER NOT NULL CHECK (next >= 0)
) STRICT
-- next
INSERT INTO code_counter (kind, next) VALUES (0, 0), (1, 0), (2, 0)
-- next
CREATE TABLE belt (
    id INTEGER PRIMARY KEY,
    profile TEXT NOT NULL CHECK (profile <> ''),
    teeth INTEGER CHECK (teeth > 0),
    length_nm INTEGER NOT NULL CHECK (length_nm > 0),
    construction TEXT NOT NULL,
    unit INTEGER NOT NULL CHECK (unit IN (0, 1)),
    body TEXT NOT NULL,
    cord TEXT NOT NULL,
    price_thousandths INTEGER NOT NULL CHECK (price_thousandths >= 0),
    new_sleeve INTEGER NOT NULL CHECK (new_sleeve >= 0),
    sleeve_cost INTEGER NOT NULL CHECK (sleeve_cost >= 0),
    delivery_days INTEGER NOT NULL CHECK (delivery_days >= 0),
    UNIQUE (profile, length_nm, construction),
    UNIQUE (id, unit)
) STRICT
-- next
CREATE TABLE listed_width (
    belt INTEGER NOT NULL REFERENCES belt (id),
    extent INTEGER NOT NULL CHECK (extent > 0),
    PRIMARY KEY (belt, extent)
) STRICT, WITHOUT ROWID
-- next
CREATE TABLE place (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE CHECK (name <> '')
) STRICT
-- next
-- Extent and cost are the sums of the piece's postings on the accounts rack and ready, kept here in the same
-- transaction so that 20,000 pieces are read at once; verify recomputes them.
CREATE TABLE piece (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    belt INTEGER NOT NULL REFERENCES belt (id),
    kind INTEGER NOT NULL CHECK (kind BETWEEN 0 AND 2),
    extent INTEGER NOT NULL DEFAULT 0 CHECK (extent >= 0),
    cost INTEGER NOT NULL DEFAULT 0 CHECK (cost >= 0),
    parent INTEGER REFERENCES piece (id),
    place INTEGER REFERENCES place (id),
    received_day INTEGER NOT NULL,
    made_day INTEGER,
    batch TEXT NOT NULL
) STRICT
-- next
CREATE INDEX piece_on_rack ON piece (belt) WHERE extent > 0
-- next
CREATE INDEX piece_of_parent ON piece (parent) WHERE parent IS NOT NULL
