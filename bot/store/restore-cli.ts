import { parseArgs } from 'node:util';
import { Problem } from '../../core/problem.ts';
import { loadEnvFile, readConfig } from '../config.ts';
import { memberFile, roomFile } from './files.ts';
import { restore } from './restore.ts';

/** 64 wrong use, 78 something to put right first (sysexits.h: EX_USAGE, EX_CONFIG); nothing has changed then. */
const exit = { usage: 64, config: 78 } as const;
const usage = `Usage: node dist/bot/store/restore-cli.js [--room] BACKUP_FILE
Puts a backup in the place of the data file in DATA_DIR. Stop the bot first.
--room: the file of the terminal room
`;

function readArguments(): { backup: string; isRoom: boolean } | undefined {
  try {
    const options = { room: { type: 'boolean', default: false } } as const;
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    const [backup, more] = positionals;
    return backup === undefined || more !== undefined ? undefined : { backup, isRoom: values.room };
  } catch {
    return undefined;
  }
}

function run(): number {
  const asked = readArguments();
  if (asked === undefined) {
    process.stderr.write(usage);
    return exit.usage;
  }
  try {
    loadEnvFile();
    const { dataDir } = readConfig(process.env);
    const file = asked.isRoom ? roomFile(dataDir) : memberFile(dataDir);
    const replaced = restore({ backup: asked.backup, file, nowMs: Date.now() });
    process.stdout.write(`Restored ${file}.\n`);
    if (replaced !== undefined)
      process.stdout.write(`The file it replaced is ${replaced}; remove it when all is well.\n`);
    process.stdout.write('Whoever had their data erased since this backup is back: erase them again.\n');
    return 0;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    process.stderr.write(`${[error.message, error.given, error.hint].filter(Boolean).join('\n')}\n`);
    return exit.config;
  }
}

process.exitCode = run();
