/**
 * Tanks that a member shows to someone for a time. A row goes with the tank, with its owner and with the helper; one that
 * is over is not looked at, and is removed soon after.
 */
export const schema4 = `
CREATE TABLE shown_tank (
  owner INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  helper INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  tank INTEGER NOT NULL,
  until_ms INTEGER NOT NULL,
  PRIMARY KEY (tank, helper),
  CHECK (owner <> helper),
  FOREIGN KEY (tank, owner) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE INDEX shown_tank_owner ON shown_tank (owner);
CREATE INDEX shown_tank_helper ON shown_tank (helper);
CREATE INDEX shown_tank_until ON shown_tank (until_ms);
`;
