-- Years before a period are read in a few thousand rows: the sums of the ledger (0010) in two levels, and what each
-- month's movements used up. level 0: spans of thirty days, level 1: spans of twelve of these; span: at_ms / the length.
DROP TABLE flow_total
-- next
CREATE TABLE flow_total (
    level INTEGER NOT NULL CHECK (level IN (0, 1)),
    span INTEGER NOT NULL,
    belt INTEGER NOT NULL REFERENCES belt (id),
    person INTEGER NOT NULL REFERENCES person (id),
    account INTEGER NOT NULL CHECK (account BETWEEN 0 AND 9 AND account <> 2),
    reason INTEGER NOT NULL CHECK (reason BETWEEN 0 AND 4),
    amount INTEGER NOT NULL,
    cost INTEGER NOT NULL,
    PRIMARY KEY (level, span, belt, person, account, reason)
) STRICT, WITHOUT ROWID
-- next
INSERT INTO flow_total (level, span, belt, person, account, reason, amount, cost)
SELECT 0, m.at_ms / 2592000000, m.belt, m.person, p.account, coalesce(p.reason, 4),
    sum(p.amount), sum(p.cost)
FROM movement m JOIN posting p ON p.movement = m.id WHERE p.account <> 2
GROUP BY m.at_ms / 2592000000, m.belt, m.person, p.account, coalesce(p.reason, 4)
-- next
INSERT INTO flow_total (level, span, belt, person, account, reason, amount, cost)
SELECT 1, span / 12, belt, person, account, reason, sum(amount), sum(cost)
FROM flow_total WHERE level = 0 GROUP BY span / 12, belt, person, account, reason
-- next
-- What each month's movements used up, for judging what chance does: kept as the sums above are. A movement that sold
-- or lost something counts once; sums of squares in square units. month: year * 12 + month - 1 (UTC).
CREATE TABLE scatter_total (
    month INTEGER NOT NULL,
    unit INTEGER NOT NULL CHECK (unit IN (0, 1)),
    movements INTEGER NOT NULL,
    sold INTEGER NOT NULL,
    lost INTEGER NOT NULL,
    lost_lost REAL NOT NULL,
    lost_used REAL NOT NULL,
    used_used REAL NOT NULL,
    PRIMARY KEY (month, unit)
) STRICT, WITHOUT ROWID
-- next
INSERT INTO scatter_total (month, unit, movements, sold, lost, lost_lost, lost_used, used_used)
SELECT strftime('%Y', day, 'unixepoch') * 12 + strftime('%m', day, 'unixepoch') - 1 AS month, unit, count(*),
    sum(sold), sum(lost), sum(1.0 * lost * lost), sum(1.0 * lost * (sold + lost)),
    sum(1.0 * (sold + lost) * (sold + lost))
FROM (SELECT m.at_ms / 1000 AS day, b.unit AS unit,
        sum(CASE WHEN p.account = 4 THEN p.amount ELSE 0 END) AS sold,
        sum(CASE WHEN p.account >= 5 THEN p.amount ELSE 0 END) AS lost
    FROM movement m JOIN belt b ON b.id = m.belt JOIN posting p ON p.movement = m.id GROUP BY m.id) AS one
WHERE sold <> 0 OR lost <> 0 GROUP BY 1, 2
