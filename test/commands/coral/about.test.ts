import { describe, expect, it } from 'vitest';
import { aboutLines } from '../../../commands/coral/about-lines.ts';
import { aboutCoralCommand } from '../../../commands/coral/about.ts';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { hazardLines } from '../../../commands/coral/hazard-lines.ts';
import { findCommand } from '../../../commands/index.ts';
import type { Bases } from '../../../core/corals/basis.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { kind } from '../../core/corals/scenes.ts';
import { problemOf, textOf } from '../text.ts';
import { CUT, rendered } from './rendered.ts';
import { inputOf } from '../../action.ts';

const about = (coral: string) => aboutCoralCommand.run({ coral }, { nowMs: 0 });
const all = corals.map((entry) => ({ id: entry.id, entry }));

describe.each(all)('$id', ({ entry }) => {
  const given = about(tellingName(entry));
  const { issues, text } = rendered(given);

  it('fits a message whole', () => {
    expect(issues).toEqual([]);
    expect(text).not.toMatch(CUT);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  it('calls nothing published that is not, and nothing else than it is', () => {
    for (const [number, bases, label] of numbersOf(entry)) {
      const line = given.facts
        .filter((fact) => fact.label === label || fact.label === `more on ${label}`)
        .map(({ value }) => value)
        .join('; ');
      const words = behind(line, number);
      const kinds = new Set(bases.map((basis) => basis.kind));
      const says = {
        published: /published/,
        memory: /from memory/,
        practice: /common practice/,
        'project rule': /project rule/,
      };
      for (const [name, pattern] of Object.entries(says)) {
        expect(pattern.test(words), `${number} in "${line}": ${name}`).toBe(kinds.has(name as 'memory'));
      }
    }
  });

  it('offers only commands there are, with what leads back to it alone', () => {
    for (const action of given.next) {
      const { command } = action;
      const input = inputOf(action);
      expect(findCommand(command.split(' ')), command).toBeDefined();
      const coral = input['coral'] ?? input['a'] ?? '';
      expect(about(coral).headline).toBe(given.headline);
    }
  });
});

/** Every number of an entry as it is printed, with its bases and the line it stands in. */
function numbersOf(entry: CoralEntry): readonly (readonly [string, Bases, string])[] {
  const { light, sting, size, growth, depth } = entry;
  const reach = sting.reachLowCm === sting.reachHighCm ? '' : `${sting.reachLowCm} to `;
  const rate = growth.lowCmPerYear === growth.highCmPerYear ? '' : `${round(growth.lowCmPerYear)} to `;
  return [
    [
      entry.photosynthetic ? `a tank-grown piece begins near ${light.startPpfd}` : `${light.highPpfd} PAR`,
      light.basis,
      'light',
    ],
    [`reaches ${reach}${sting.reachHighCm} cm at full stretch`, sting.reachBasis, 'sting'],
    [`keep ${sting.keepClearCm} cm clear to unlike kinds`, sting.keepClearBasis, 'room'],
    [`up to some ${size.practicalMaxCm} cm wide in a tank`, size.basis, 'size'],
    ...(size.naturalMaxCm === undefined || size.naturalBasis === undefined
      ? []
      : [[`widest wild one ${round(size.naturalMaxCm)} cm`, size.naturalBasis, 'size'] as const]),
    [`${rate}${round(growth.highCmPerYear)} cm`, growth.basis, 'growth'],
    ...(growth.wild === undefined || (growth.wild.values === 1 && growth.range === 'minimum to maximum')
      ? []
      : [[wildWords(growth.wild.values), growth.wild.basis, 'growth'] as const]),
    [`${depth.lowerM} m deep`, depth.basis, 'in the wild'],
  ];
}

function wildWords(values: number): string {
  return values === 1 ? 'One wild value' : `Middle of ${values} wild values`;
}

function round(value: number): string {
  return String(Number(value.toFixed(value < 20 ? 1 : 0)));
}

/** The brackets that follow a number; they may hold brackets of their own. */
function behind(line: string, number: string): string {
  const at = line.indexOf(number);
  expect(at, `"${number}" in "${line}"`).toBeGreaterThanOrEqual(0);
  const from = line.indexOf('(', at + number.length);
  let depth = 0;
  for (let end = from; end < line.length; end++) {
    if (line[end] === '(') depth++;
    if (line[end] === ')' && --depth === 0) return line.slice(from, end);
  }
  throw new Error(`nothing behind ${number} in ${line}`);
}

it('knows what each line rests on', () => {
  for (const entry of corals) {
    for (const { label, value } of [...aboutLines(entry), ...hazardLines([entry])]) {
      expect(value, `${entry.id} ${label}`).toMatch(/common practice|from memory|published: |project rule/);
    }
  }
});

describe('what comes first', () => {
  it('is palytoxin in every entry that may hold it, before all other cautions', () => {
    const holders = corals.filter(({ hazard }) => hazard?.palytoxin === true);
    // Hamade et al. 2015, Pelin et al. 2016: zoanthids; all four kinds of the guide.
    expect(holders.map(({ id }) => id)).toEqual([
      'zoanthus',
      'palythoa',
      'yellow-polyps',
      'snake-polyps-isaurus',
    ]);
    for (const entry of holders) {
      const { dangers } = about(tellingName(entry));
      expect(dangers[0]).toMatch(/May hold palytoxin/);
      expect(dangers.join(' ')).toMatch(/May hold palytoxin.*[Gg]loves.*doctor or a poison centre/);
    }
    expect(textOf(about('torch'))).not.toMatch(/palytoxin/);
  });

  it.each([
    // Common practice.
    ['torch', /75 to 200 PAR beginning near 110/],
    ['goniopora', /moderate to keep/],
    ['green star polyps', /easy to keep/],
    ['sun coral', /demanding to keep, food rather than light/],
  ])('%s: the headline is the answer', (name, pattern) => expect(about(name).headline).toMatch(pattern));

  it('is honest of the hard ones', () => {
    for (const entry of corals.filter(({ hardiness }) => hardiness.value === 'demanding'))
      expect(about(tellingName(entry)).cautions.join(), entry.id).toMatch(/Not a coral to begin with/);
  });
});

describe('names', () => {
  it.each([
    ['Scolymia australis', /Scolymia australis is now Homophyllia australis/],
    ['Euphyllia paraancora', /other names: Euphyllia paraancora, older name/],
    ['hydnofora', /"hydnofora" read as Hydnophora/],
    // Arrigoni et al. 2016: the accepted name since.
    ['scoly australis', /other names: Scolymia australis, older name \(published/],
  ])('%s says what it is called now', (name, pattern) =>
    expect(about(name).read.join('\n')).toMatch(pattern),
  );

  it.each(['hammer', 'acan', 'plate coral', 'acropora'])('%s: none is guessed', (name) => {
    const problem = problemOf(() => about(name));
    expect(problem.choices.length).toBeGreaterThan(1);
    for (const choice of problem.choices) expect(about(choice).headline).toMatch(/to keep/);
  });

  it('nonsense is not a coral', () => expect(problemOf(() => about('xqzzzv')).choices).toEqual([]));
});

it('keeps law and people apart, and gives no legal advice', () => {
  const law = about('sun coral')
    .facts.filter(({ label }) => label.endsWith('law'))
    .map(({ value }) => value)
    .join('. ');
  expect(law).toMatch(/CITES Appendix II.*\(published: CITES Secretariat 2006\)/);
  expect(law).toMatch(/never release.*no legal advice/);
  expect(kind('sun-coral').law.cites).toBe('II');
});
