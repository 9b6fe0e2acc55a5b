import { join } from 'node:path';

/** The file the bot keeps its members' data in. */
export function memberFile(dataDir: string): string {
  return join(dataDir, 'sumpside.sqlite');
}

/** The file of the terminal room. */
export function roomFile(dataDir: string): string {
  return join(dataDir, 'room.sqlite');
}
