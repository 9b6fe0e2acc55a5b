import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const project = fileURLToPath(new URL('../../../', import.meta.url));

export interface Compiled {
  /** Starts a file of the project, named by its source, as a process of its own. */
  readonly start: (source: string, args: readonly string[], env?: NodeJS.ProcessEnv) => Child;
  readonly remove: () => void;
}

export interface Child {
  readonly process: ChildProcess;
  /** Everything written so far. */
  readonly written: { out: string; err: string };
  /** The exit code, or null when a signal ended it. */
  readonly exit: Promise<number | null>;
}

/** Compiles these files and what they import into a folder of its own, from where the packages are found. */
export function compile(sources: readonly string[]): Compiled {
  mkdirSync(join(project, 'dist'), { recursive: true });
  const folder = mkdtempSync(join(project, 'dist', 'test-'));
  const settings = {
    extends: join(project, 'tsconfig.build.json'),
    compilerOptions: { rootDir: project, outDir: folder, incremental: false, tsBuildInfoFile: null },
    files: sources.map((source) => join(project, source)),
    include: [],
  };
  const config = join(folder, 'tsconfig.json');
  writeFileSync(config, JSON.stringify(settings));
  const compiler = join(project, 'node_modules', 'typescript', 'bin', 'tsc');
  execFileSync(process.execPath, [compiler, '-p', config], { cwd: project });
  return {
    start: (source, args, env = {}) =>
      run([join(folder, source.replace(/\.ts$/, '.js')), ...args], folder, env),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

function run(args: readonly string[], cwd: string, env: NodeJS.ProcessEnv): Child {
  const child = spawn(process.execPath, args, { cwd, env });
  const written = { out: '', err: '' };
  child.stdout.on('data', (chunk) => (written.out += String(chunk)));
  child.stderr.on('data', (chunk) => (written.err += String(chunk)));
  const exit = new Promise<number | null>((resolve) => child.once('close', resolve));
  return { process: child, written, exit };
}
