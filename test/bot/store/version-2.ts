import { version1 } from './version-1.ts';

/** A file as the second released version wrote it, with one member: never edited, so that every later bot can open it. */
export const version2 = `
${version1}
PRAGMA user_version = 2;
ALTER TABLE person ADD COLUMN zone TEXT;
ALTER TABLE tank ADD COLUMN zone TEXT;

CREATE TABLE reminder (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  tank INTEGER,
  text TEXT NOT NULL,
  parameters TEXT NOT NULL CHECK (json_valid(parameters)),
  anchor TEXT NOT NULL,
  zone TEXT NOT NULL,
  rule TEXT NOT NULL CHECK (json_valid(rule)),
  times INTEGER CHECK (times > 0),
  server TEXT,
  channel TEXT,
  next_ms INTEGER,
  again_ms INTEGER,
  pause_from_ms INTEGER,
  pause_until_ms INTEGER,
  last_done_ms INTEGER,
  trouble TEXT,
  wake_ms INTEGER,
  CHECK ((server IS NULL) = (channel IS NULL)),
  CHECK (wake_ms IS NULL OR next_ms IS NOT NULL OR again_ms IS NOT NULL),
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX reminder_person ON reminder (person, tank);
CREATE INDEX reminder_wake ON reminder (wake_ms) WHERE wake_ms IS NOT NULL;

CREATE TABLE lease (
  reminder INTEGER PRIMARY KEY REFERENCES reminder (id) ON DELETE CASCADE,
  until_ms INTEGER NOT NULL,
  attempts INTEGER NOT NULL CHECK (attempts > 0)
) STRICT;

CREATE TABLE hand_over (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  owner INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  sitter INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  tank INTEGER,
  from_ms INTEGER NOT NULL,
  until_ms INTEGER NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('asked', 'accepted', 'declined', 'over')),
  news TEXT NOT NULL CHECK (news IN ('ask the sitter', 'accepted', 'declined', 'ended')),
  attempts INTEGER NOT NULL DEFAULT 0 CHECK (attempts >= 0),
  wake_ms INTEGER NOT NULL,
  CHECK (owner <> sitter),
  CHECK (from_ms < until_ms),
  FOREIGN KEY (tank, owner) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX hand_over_owner ON hand_over (owner, tank);
CREATE INDEX hand_over_sitter ON hand_over (sitter);
CREATE INDEX hand_over_wake ON hand_over (wake_ms);

CREATE TABLE notice (
  id INTEGER PRIMARY KEY,
  person INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  text TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  UNIQUE (person, text)
) STRICT;

CREATE TABLE server (
  id TEXT PRIMARY KEY CHECK (length(id) BETWEEN 17 AND 20 AND id NOT GLOB '*[^0-9]*'),
  settings TEXT NOT NULL CHECK (json_valid(settings)),
  left_ms INTEGER
) STRICT, WITHOUT ROWID;
UPDATE person SET zone = 'Asia/Tokyo' WHERE id = 5;
UPDATE tank SET zone = 'Pacific/Apia' WHERE id = 9;
INSERT INTO reminder (id, person, tank, text, parameters, anchor, zone, rule, next_ms, wake_ms)
  VALUES (3, 5, 9, 'test alkalinity', '[2]', '2026-03-14 18:30', 'Asia/Tokyo', '{"every":"weeks","count":1,"on":[6]}',
    1773480600000, 1773480600000);
`;
