/**
 * Answers and calls that buttons stand for, for thirty days: what was answered is shown again without being run again.
 * A row belongs to the Discord id it was made for, and says by itself whether anybody else may open it.
 */
export const schema7 = `
CREATE TABLE held (
  id TEXT PRIMARY KEY,
  person_id TEXT NOT NULL,
  made_ms INTEGER NOT NULL,
  is_private INTEGER NOT NULL CHECK (is_private IN (0, 1)),
  kind TEXT NOT NULL CHECK (kind IN ('answer', 'call')),
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX held_person ON held (person_id, made_ms);
CREATE INDEX held_made ON held (made_ms);
`;
