import { version3 } from './version-3.ts';

/** A file as the fourth version wrote it, with a tank that is shown: never edited, so that every later bot can open it. */
export const version4 = `
${version3}
PRAGMA user_version = 4;
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
INSERT INTO person (id, discord_id, created_ms) VALUES (6, '20000000000000000002', 1700000000000);
INSERT INTO shown_tank VALUES (5, 6, 9, 4102444800000);
`;
