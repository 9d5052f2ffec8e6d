-- A shop may have more than one cutter: each mounting keeps the one it is planned on, each movement the one it was
-- made on, and the sums of the reports tell them apart. Until now there was one, and all was cut on it.
-- The one with the lowest position is the usual one. gone: no longer used, but widths were cut on it.
CREATE TABLE cutter (
    id INTEGER PRIMARY KEY,
    position INTEGER NOT NULL,
    name TEXT NOT NULL CHECK (name <> ''),
    steel_cord INTEGER NOT NULL CHECK (steel_cord IN (0, 1)),
    aramid_cord INTEGER NOT NULL CHECK (aramid_cord IN (0, 1)),
    polyurethane INTEGER NOT NULL CHECK (polyurethane IN (0, 1)),
    gap_mm REAL NOT NULL,
    gone INTEGER NOT NULL DEFAULT 0 CHECK (gone IN (0, 1))
) STRICT
-- next
INSERT INTO cutter (id, position, name, steel_cord, aramid_cord, polyurethane, gap_mm) VALUES (1, 0,
    coalesce((SELECT nullif(value, '') FROM setting WHERE name = 'cutter'), 'Cutter'),
    coalesce((SELECT value FROM setting WHERE name = 'cutter.steel_cord'), '0') <> '0',
    coalesce((SELECT value FROM setting WHERE name = 'cutter.aramid_cord'), '0') <> '0',
    coalesce((SELECT value FROM setting WHERE name = 'cutter.polyurethane'), '1') <> '0',
    coalesce((SELECT CAST(nullif(value, '') AS REAL) FROM setting WHERE name = 'cutter.gap_mm'), 10.0))
-- next
DELETE FROM setting WHERE name IN ('cutter', 'cutter.steel_cord', 'cutter.aramid_cord', 'cutter.polyurethane',
    'cutter.gap_mm')
-- next
ALTER TABLE cutter_shaft RENAME TO one_cutters_shaft
-- next
CREATE TABLE cutter_shaft (
    cutter INTEGER NOT NULL REFERENCES cutter (id),
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    diameter_driven REAL NOT NULL,
    diameter_tension REAL NOT NULL,
    usable REAL NOT NULL,
    closest REAL NOT NULL,
    farthest REAL NOT NULL,
    PRIMARY KEY (cutter, position)
) STRICT, WITHOUT ROWID
-- next
INSERT INTO cutter_shaft (cutter, position, name, diameter_driven, diameter_tension, usable, closest, farthest)
SELECT 1, position, name, diameter_driven, diameter_tension, usable, closest, farthest FROM one_cutters_shaft
-- next
DROP TABLE one_cutters_shaft
-- next
ALTER TABLE mounting ADD COLUMN cutter INTEGER REFERENCES cutter (id)
-- next
UPDATE mounting SET cutter = 1
-- next
ALTER TABLE movement ADD COLUMN cutter INTEGER REFERENCES cutter (id)
-- next
DROP TRIGGER movement_stays
-- next
-- Cut and miscut; a piece that was only divided was not.
UPDATE movement SET cutter = 1 WHERE act IN (1, 3)
    AND EXISTS (SELECT 1 FROM posting p WHERE p.movement = movement.id AND p.account <> 2)
-- next
UPDATE movement SET cutter = 1 WHERE act = 7 AND undoes IN (SELECT id FROM movement WHERE cutter = 1)
-- next
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN
    SELECT RAISE(ABORT, 'a movement is never changed');
END
-- next
DROP TABLE flow_total
-- next
-- As before (0012), and by cutter (0: by hand).
CREATE TABLE flow_total (
    level INTEGER NOT NULL CHECK (level IN (0, 1)),
    span INTEGER NOT NULL,
    belt INTEGER NOT NULL REFERENCES belt (id),
    person INTEGER NOT NULL REFERENCES person (id),
    cutter INTEGER NOT NULL CHECK (cutter >= 0),
    account INTEGER NOT NULL CHECK (account BETWEEN 0 AND 9 AND account <> 2),
    reason INTEGER NOT NULL CHECK (reason BETWEEN 0 AND 4),
    amount INTEGER NOT NULL,
    cost INTEGER NOT NULL,
    PRIMARY KEY (level, span, belt, person, cutter, account, reason)
) STRICT, WITHOUT ROWID
-- next
INSERT INTO flow_total (level, span, belt, person, cutter, account, reason, amount, cost)
SELECT 0, m.at_ms / 2592000000, m.belt, m.person, coalesce(m.cutter, 0), p.account, coalesce(p.reason, 4),
    sum(p.amount), sum(p.cost)
FROM movement m JOIN posting p ON p.movement = m.id WHERE p.account <> 2
GROUP BY m.at_ms / 2592000000, m.belt, m.person, coalesce(m.cutter, 0), p.account, coalesce(p.reason, 4)
-- next
INSERT INTO flow_total (level, span, belt, person, cutter, account, reason, amount, cost)
SELECT 1, span / 12, belt, person, cutter, account, reason, sum(amount), sum(cost)
FROM flow_total WHERE level = 0 GROUP BY span / 12, belt, person, cutter, account, reason
