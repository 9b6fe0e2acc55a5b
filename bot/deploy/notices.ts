import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const lockSchema = z.object({
  packages: z.record(z.string(), z.object({ dev: z.boolean().optional(), version: z.string().optional() })),
});
const packageSchema = z.object({ name: z.string(), version: z.string(), license: z.string().optional() });

/** A package that runs with the bot, and the licence it came with. */
export interface Notice {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  /** Text of its licence files; empty where it ships none. */
  readonly text: string;
}

const LICENCE_FILE = /^(?:licen[cs]e|copying|notice)/i;

/** Every package of the lock file that is no tool of development and is installed under `root`. */
export function noticesOf(root: string): readonly Notice[] {
  const lock = lockSchema.parse(JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')));
  return Object.entries(lock.packages)
    .filter(([path, { dev }]) => path !== '' && dev !== true && existsSync(join(root, path, 'package.json')))
    .map(([path]) => noticeIn(join(root, path)));
}

function noticeIn(folder: string): Notice {
  const {
    name,
    version,
    license = 'see its text',
  } = packageSchema.parse(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')));
  const files = readdirSync(folder, { withFileTypes: true }).filter(
    (file) => file.isFile() && LICENCE_FILE.test(file.name),
  );
  const text = files.map((file) => readFileSync(join(folder, file.name), 'utf8').trim()).join('\n\n');
  return { name, version, license, text };
}

/** One file for all of them, as it lies in the image. */
export function noticesText(notices: readonly Notice[]): string {
  const parts = notices.map(({ name, version, license, text }) =>
    [`${name} ${version}`, `Licence: ${license}`, text].filter((part) => part !== '').join('\n\n'),
  );
  return `Packages that run with Sumpside, and their licences\n\n${parts.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}
