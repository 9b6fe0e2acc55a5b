/** The units somebody chose for themselves, as JSON; null where they did not. */
export const schema8 = `
ALTER TABLE person ADD COLUMN units TEXT CHECK (units IS NULL OR json_valid(units));
`;
