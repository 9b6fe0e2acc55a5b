/** A file as the first released version wrote it, with one member: never edited, so that every later bot can open it. */
export const version1 = `
PRAGMA application_id = 1398099280;
PRAGMA user_version = 1;
CREATE TABLE person (
  id INTEGER PRIMARY KEY CHECK (id > 0),
  discord_id TEXT NOT NULL UNIQUE CHECK (
    discord_id = 'local' OR (length(discord_id) BETWEEN 17 AND 20 AND discord_id NOT GLOB '*[^0-9]*')
  ),
  created_ms INTEGER NOT NULL,
  tank_in_use INTEGER,
  FOREIGN KEY (tank_in_use, id) REFERENCES tank (id, person)
) STRICT;
CREATE INDEX person_tank_in_use ON person (tank_in_use) WHERE tank_in_use IS NOT NULL;
CREATE TABLE tank (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  name TEXT NOT NULL COLLATE NOCASE,
  kind TEXT NOT NULL,
  net_volume_l REAL NOT NULL CHECK (net_volume_l > 0),
  display_volume_l REAL CHECK (display_volume_l > 0),
  volume_basis TEXT NOT NULL,
  started_on TEXT,
  instrument TEXT,
  light_hours REAL,
  units TEXT NOT NULL CHECK (json_valid(units)),
  targets TEXT NOT NULL CHECK (json_valid(targets)),
  UNIQUE (person, name),
  UNIQUE (id, person)
) STRICT;
CREATE TABLE entry (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL,
  tank INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  made_ms INTEGER NOT NULL,
  note TEXT,
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX entry_tank ON entry (tank);
CREATE INDEX entry_note ON entry (tank) WHERE note IS NOT NULL;
CREATE TABLE reading (
  tank INTEGER NOT NULL,
  parameter INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  entry INTEGER NOT NULL,
  person INTEGER NOT NULL,
  value REAL NOT NULL,
  PRIMARY KEY (tank, parameter, at_ms, entry),
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE TABLE addition (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL,
  tank INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  parameter INTEGER NOT NULL,
  rise REAL NOT NULL,
  compound TEXT,
  mass_g REAL,
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX addition_tank ON addition (tank, at_ms);
INSERT INTO person (id, discord_id, created_ms) VALUES (5, '100000000000000001', 1700000000000);
INSERT INTO tank VALUES (9, 5, 'Pantry', 'small-polyp', 283.9, 300, '75 gal, read as US gallons', '2024-02-29',
  'refractometer', 9.5, '{"volume":"US gal"}', '{"alkalinity":[7.5,8.5]}');
UPDATE person SET tank_in_use = 9 WHERE id = 5;
INSERT INTO entry VALUES (31, 5, 9, 1700000100000, 1700000200000, 'after the change');
INSERT INTO reading VALUES (9, 1, 1700000100000, 31, 5, 34.9), (9, 2, 1700000100000, 31, 5, 7.6);
INSERT INTO addition VALUES (4, 5, 9, 1700000300000, 2, 0.7, 'soda ash', 38.5);
`;
