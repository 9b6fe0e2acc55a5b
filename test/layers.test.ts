import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, sep } from 'node:path';
import { describe, expect, it } from 'vitest';

const LAYERS = ['core', 'commands', 'bot'] as const;
type Layer = (typeof LAYERS)[number];

/** What each layer may import besides its own files. */
const MAY_IMPORT: Record<Layer, { layers: readonly Layer[]; packages: readonly string[] }> = {
  core: {
    layers: ['core'],
    packages: [
      'mathjs/number',
      'zod',
      'node:module',
      'd3-contour',
      'd3-scale',
      'd3-shape',
      'temporal-polyfill',
      'ical-generator',
      'intl-messageformat',
      'node:async_hooks',
      'timezones-ical-library',
    ],
  },
  commands: { layers: ['core', 'commands'], packages: ['zod'] },
  bot: {
    layers: ['core', 'commands', 'bot'],
    packages: ['discord.js', 'zod', 'pino', 'node:', 'better-sqlite3', '@resvg/resvg-js'],
  },
};

function filesOf(layer: Layer): string[] {
  return readdirSync(layer, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(layer, name));
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(/^(?:import|export)\b[^;]*?\bfrom '([^']+)';|\bimport\('([^']+)'\)/gm)].map(
    (match) => match[1] ?? match[2] ?? '',
  );
}

describe.each(LAYERS)('%s', (layer) => {
  const files = filesOf(layer);

  it('has files', () => expect(files.length).toBeGreaterThan(3));

  it.each(files)('%s imports only what its layer may', (file) => {
    const { layers, packages } = MAY_IMPORT[layer];
    for (const target of importsOf(file)) {
      if (!target.startsWith('.')) {
        expect(
          packages.some((name) => target === name || (name.endsWith(':') && target.startsWith(name))),
          target,
        ).toBe(true);
        continue;
      }
      expect(target.endsWith('.ts'), target).toBe(true);
      const first = normalize(join(dirname(file), target)).split(sep)[0];
      expect(layers as readonly string[], `${file} -> ${target}`).toContain(first);
    }
  });
});

describe('core is pure', () => {
  it.each(filesOf('core'))('%s has no clock, chance, file or network', (file) => {
    const text = readFileSync(file, 'utf8')
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/\/\/.*$/gm, '');
    expect(text).not.toMatch(
      /Date\.now|new Date\(\)|Math\.random|performance\.|process\.|fetch\(|globalThis/,
    );
  });
});

function users(name: string, layers: readonly Layer[]): string[] {
  return layers.flatMap(filesOf).filter((file) => importsOf(file).some((target) => target.startsWith(name)));
}

describe('mathjs', () => {
  it('is used behind arithmetic.ts only', () => {
    const only = [join('core', 'quantity', 'arithmetic.ts')];
    expect(users('mathjs', LAYERS)).toEqual(only);
  });
});

describe('node:module', () => {
  it('is in core only where a library is loaded when it is first needed', () => {
    expect(users('node:module', ['core', 'commands'])).toEqual([
      join('core', 'quantity', 'arithmetic.ts'),
      join('core', 'schedule', 'ical-zone.ts'),
      join('core', 'schedule', 'ical.ts'),
    ]);
  });
});

/** Pairs of rooms that still import each other, to be parted: none is added, and one that is parted leaves the list. */
const UNPARTED = [
  'bot/discord/asked <-> bot/discord/message',
  'commands/checkup <-> commands/log',
  'commands/coral <-> commands/light',
  'commands/coral <-> commands/tank',
  'commands/dose <-> commands/log',
  'commands/log <-> commands/tank',
  'commands/remind <-> commands/tank',
  'core/schedule <-> core/words',
];

/** A room is a folder; the folders within it are parts of it. */
function importedRooms(): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const file of LAYERS.flatMap(filesOf)) {
    const room = dirname(file);
    for (const target of importsOf(file).filter((each) => each.startsWith('.'))) {
      const other = dirname(normalize(join(room, target)));
      const isPart = other === room || other.startsWith(room + sep) || room.startsWith(other + sep);
      if (!isPart) found.set(room, (found.get(room) ?? new Set()).add(other));
    }
  }
  return found;
}

describe('two rooms', () => {
  it('do not import each other, but for those that are still to be parted', () => {
    const rooms = importedRooms();
    expect(rooms.size).toBeGreaterThan(20);
    const both = [...rooms].flatMap(([room, others]) =>
      [...others]
        .filter((other) => room < other && rooms.get(other)?.has(room) === true)
        .map((other) => `${room} <-> ${other}`),
    );
    expect(both.map((pair) => pair.replaceAll(sep, '/')).toSorted()).toEqual(UNPARTED);
  });
});
