-- What the reports of years need in under a second: the ledger's sums by spans of thirty days, and what was paid.
-- flow_total is kept in the transaction of each movement; verify recomputes it. It leaves out the account rack,
-- which is minus the sum of the others. reason 4: none; span: at_ms / 2592000000.
CREATE TABLE flow_total (
    belt INTEGER NOT NULL REFERENCES belt (id),
    person INTEGER NOT NULL REFERENCES person (id),
    account INTEGER NOT NULL CHECK (account BETWEEN 0 AND 9 AND account <> 2),
    reason INTEGER NOT NULL CHECK (reason BETWEEN 0 AND 4),
    span INTEGER NOT NULL,
    amount INTEGER NOT NULL,
    cost INTEGER NOT NULL,
    PRIMARY KEY (belt, person, account, reason, span)
) STRICT, WITHOUT ROWID
-- next
INSERT INTO flow_total (belt, person, account, reason, span, amount, cost)
SELECT m.belt, m.person, p.account, coalesce(p.reason, 4), m.at_ms / 2592000000, sum(p.amount), sum(p.cost)
FROM movement m JOIN posting p ON p.movement = m.id WHERE p.account <> 2
GROUP BY m.belt, m.person, p.account, coalesce(p.reason, 4), m.at_ms / 2592000000
-- next
CREATE INDEX movement_by_belt ON movement (belt, at_ms)
-- next
-- What a customer paid when the order was handed over. kind: 0 cash, 1 card, 2 transfer, 3 invoice
CREATE TABLE taking (
    sales_order INTEGER PRIMARY KEY REFERENCES sales_order (id),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    kind INTEGER NOT NULL CHECK (kind BETWEEN 0 AND 3),
    amount INTEGER NOT NULL
) STRICT
-- next
CREATE INDEX taking_by_time ON taking (at_ms)
