import { execFileSync, spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const project = fileURLToPath(new URL('../../../', import.meta.url));
const compiler = join(project, 'node_modules', 'typescript', 'bin', 'tsc');

/** How long to wait for a child in ms: long, as it only decides when to give up. */
export const patience = 60_000;

export interface Built {
  /** Starts `bot/main.js` or another compiled file, with these settings and no others; each has a DATA_DIR of its own. */
  readonly start: (file: string, args?: readonly string[], env?: NodeJS.ProcessEnv) => Child;
  readonly remove: () => void;
}

export interface Child {
  readonly process: ChildProcess;
  /** Everything written so far. */
  readonly written: { out: string; err: string };
  readonly exit: Promise<number | null>;
}

/** Compiles the project as `npm run build` does, into a folder of its own beside the usual one. */
export function build(): Built {
  mkdirSync(join(project, 'dist'), { recursive: true });
  const folder = mkdtempSync(join(project, 'dist', 'test-'));
  const options = ['-p', 'tsconfig.build.json', '--outDir', folder, '--incremental', 'false'];
  execFileSync(process.execPath, [compiler, ...options, '--tsBuildInfoFile', 'null'], { cwd: project });
  const data = mkdtempSync(join(tmpdir(), 'sumpside-data-'));
  const start = (file: string, args: readonly string[] = [], env: NodeJS.ProcessEnv = {}): Child =>
    run([join(folder, file), ...args], { DATA_DIR: mkdtempSync(join(data, 'of-')), ...env });
  const remove = (): void => {
    for (const made of [folder, data]) rmSync(made, { recursive: true, force: true });
  };
  return { start, remove };
}

function run(args: readonly string[], env: NodeJS.ProcessEnv): Child {
  const child = spawn(process.execPath, args, { cwd: tmpdir(), env: { DISCORD_TOKEN: '', ...env } });
  const written = { out: '', err: '' };
  child.stdout.on('data', (chunk) => (written.out += String(chunk)));
  child.stderr.on('data', (chunk) => (written.err += String(chunk)));
  const exit = new Promise<number | null>((resolve) => child.once('close', resolve));
  return { process: child, written, exit };
}
