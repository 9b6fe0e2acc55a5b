import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { withDefaults } from '../../../commands/defaults.ts';
import { rangeCommand } from '../../../commands/light/range.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { lightFor } from '../../../core/corals/light-need.ts';
import { origins } from '../../../core/corals/scene.ts';
import { CUT, rendered } from '../coral/rendered.ts';
import { twoPersons } from '../coral/person.ts';
import { problemOf, textOf } from '../text.ts';

const range = (input: Record<string, string>) => rangeCommand.run(input, { nowMs: 0 });

describe('with a reading', () => {
  // Range and start of a torch: common practice; what origin takes off: project rule. Light goes with the setting: common practice.
  it.each([
    [
      { origin: 'wild', reading: '180 PAR', setting: '60 %' },
      /Too bright to begin with \(move\): 180 PAR, 105 PAR over the 75 PAR it begins near\..*about 25 %/,
    ],
    [{ origin: 'tank-grown', reading: '120 PAR', setting: '50 %' }, /Fits \(settled\): 120 PAR/],
    [
      { origin: 'tank-grown', reading: '150 PAR', setting: '50 %' },
      /Too bright to begin with \(watch\): 150 PAR, 40 PAR over.*36 %/,
    ],
    [{ origin: 'tank-grown', reading: '300 PAR' }, /Too bright \(move\): 300 PAR, 190 PAR over the 110 PAR/],
    [
      { origin: 'tank-grown', reading: '40 PAR', setting: '50 %' },
      /Too dim \(watch\): 40 PAR, 70 PAR under the 110 PAR/,
    ],
  ])('a torch %j', (input, pattern) => expect(range({ coral: 'torch', ...input }).headline).toMatch(pattern));

  it('goes up week by week from the start value, never above the pace, with the setting beside it', () => {
    const rows =
      range({ coral: 'torch', origin: 'wild', reading: '180 PAR', setting: '60 %' }).table?.rows ?? [];
    expect(rows[0]).toEqual(['today', '75', '25 %']);
    for (const column of [1, 2]) {
      const values = rows.map((row) => Number(row[column]?.replace(' %', '')));
      for (const [index, value] of values.entries()) {
        const before = values[index - 1];
        // 7 % a week for a wild piece, in every printed step of both columns.
        if (before !== undefined) expect(value / before).toBeLessThanOrEqual(1.07 + 1e-9);
      }
    }
    for (const [, ppfd, setting = ''] of rows) {
      // 60 % gives 180 PAR: 3 PAR for each per cent; whole PAR are printed.
      expect(Math.abs(Number(ppfd) - 3 * Number(setting.replace(' %', '')))).toBeLessThanOrEqual(3);
    }
    // The middle of 75 to 200, to the nearest 5, at the setting rounded down to 46 %.
    expect(rows.at(-1)?.slice(1)).toEqual(['138', '46 %']);
  });

  it('says that a setting is only roughly the light, and that others stand below the lamp', () => {
    const text = textOf(range({ coral: 'torch', reading: '180 PAR', setting: '60 %' }));
    expect(text).toMatch(/only roughly.*measure again/);
    expect(text).toMatch(/lights every coral below it/);
  });

  it('says when the lamp cannot give the start value', () => {
    const text = textOf(range({ coral: 'staghorn acropora', reading: '50 PAR', setting: '80 %' }));
    expect(text).toMatch(/not reached: full power gives about 63 PAR/);
    expect(text).not.toMatch(/setting.*1\d\d %/);
  });

  it('raises nothing for what lives by food', () => {
    const given = range({ coral: 'sun coral', reading: '80 PAR', setting: '40 %' });
    expect(given.table).toBeUndefined();
    expect(given.headline).toMatch(/Fits \(settled\): 80 PAR does no harm, and it lives by food/);
  });

  // A lamp dimmed for one that needs no light would leave all others in the dark (common practice, no source).
  it('dims no lamp for what lives by food, and names its own signs', () => {
    for (const input of [{ reading: '250 PAR', setting: '50 %' }, { lamp: 'weak' }, {}]) {
      const text = textOf(range({ coral: 'sun coral', ...input }));
      expect(text).not.toMatch(/dim to|bleaches|stretch|begins near|setting for/i);
      expect(text).toMatch(/algae settle on it[^]*overhang/);
      expect(text).toMatch(/feed/);
    }
  });

  it('puts a better spot before a dimmed lamp', () => {
    const [first, second] = range({ coral: 'torch', reading: '400 PAR', setting: '80 %' }).steps;
    expect(first).toMatch(/^Begin near 100 PAR: find it a dimmer spot/);
    expect(second).toMatch(/nothing else under the lamp/);
  });

  it('sends up where the lamp is at its end', () => {
    const { headline } = range({ coral: 'acan lord', reading: '80 PAR', setting: '100 %' });
    expect(headline).toMatch(/The lamp gives no more there: move it up in steps\.$/);
  });
});

describe('without a meter', () => {
  // Project rule: a weak lamp from 40 to 80 %, a strong one from 20 to 40 %.
  it.each([
    [{ setting: '90 %', lamp: 'weak' }, /above that band: dim to 40 %.*40 to 80 %/],
    [{ setting: '60 %', lamp: 'weak' }, /within that band: begin at its low end, 40 %/],
    [{ setting: '10 %', lamp: 'strong' }, /below that band: go up slowly.*20 to 40 %/],
    [{ lamp: 'strong' }, /^Begin at 20 %.*20 to 40 %/],
  ])('%j is a wide band', (input, pattern) => {
    const given = range({ coral: 'torch', ...input });
    expect(given.headline).toMatch(pattern);
    expect(given.headline).toMatch(/a wide band, and no PAR follows from it/);
    expect(given.table?.head).toEqual(['', 'setting']);
    const others = given.facts.filter(({ label }) => !['range', 'begins near'].includes(label));
    expect(others).toHaveLength(given.facts.length - 2);
    expect(textOf({ ...given, facts: others })).not.toMatch(/\d PAR/);
  });

  it('asks which lamp a setting is of', () => {
    const problem = problemOf(() => range({ coral: 'torch', setting: '80 %' }));
    expect(problem.field).toBe('lamp');
    for (const lamp of problem.choices)
      expect(range({ coral: 'torch', setting: '80 %', lamp }).headline).toMatch(/band/);
  });
});

it('names too much light first, as the commoner harm', () => {
  for (const input of [{}, { reading: '120 PAR' }, { lamp: 'weak' }]) {
    const given = range({ coral: 'torch', ...input });
    expect(given.cautions[0]).toMatch(/^Too much light is the commoner harm/);
    const labels = given.facts.map(({ label }) => label);
    expect(labels.indexOf('signs of too much')).toBeGreaterThan(-1);
    expect(labels.indexOf('signs of too much')).toBeLessThan(labels.indexOf('signs of too little'));
  }
});

it('is right and whole for every coral and origin', () => {
  const any = fc.record({
    entry: fc.constantFrom(...corals),
    origin: fc.constantFrom(undefined, ...origins),
    reading: fc.option(fc.integer({ min: 1, max: 900 }), { nil: undefined }),
    setting: fc.option(fc.integer({ min: 1, max: 100 }), { nil: undefined }),
    lamp: fc.constantFrom('weak', 'strong'),
  });
  fc.assert(
    fc.property(any, ({ entry, origin, reading, setting, lamp }) => {
      const texts = { origin, reading: reading && `${reading} PAR`, setting: setting && `${setting} %` };
      const said = Object.fromEntries(
        Object.entries(texts).flatMap(([key, value]) => (value === undefined ? [] : [[key, String(value)]])),
      );
      const given = range({ coral: tellingName(entry), lamp, ...said });
      const { issues, text } = rendered(given);
      expect(issues).toEqual([]);
      expect(text).not.toMatch(CUT);
      expect(text).not.toMatch(/undefined|NaN|Infinity/);
      const { lowPpfd, highPpfd, startPpfd } = lightFor(entry, origin ?? 'unknown');
      expect(text).toContain(`${lowPpfd} to ${highPpfd} PAR`);
      if (reading !== undefined && reading > highPpfd && entry.photosynthetic)
        expect(given.headline).toMatch(/move/);
      if (reading !== undefined && entry.photosynthetic && reading >= lowPpfd && reading <= startPpfd)
        expect(given.headline).toMatch(/Fits \(settled\):/);
      if (entry.light.basis.every(({ kind }) => kind === 'memory')) expect(text).not.toMatch(/published/);
    }),
    { numRuns: 400 },
  );
});

describe('at a spot of my tank', () => {
  const [ada, bea] = twoPersons();
  ada.say('/light measured at:20 x 25 x 10 cm par:100');
  ada.say('/light measured at:40 x 25 x 10 cm par:200');

  it('is in between the readings, with its band', () => {
    // Inverse-distance weighting: half-way is the mean.
    const given = ada.say('/light range coral:torch at:30 x 25 x 10 cm origin:tank-grown setting:50 %');
    expect(given.facts.find(({ label }) => label === 'light at the spot')?.value).toMatch(
      /^about 150 PAR, somewhere in \d+ to \d+ PAR, 10 cm from the nearest reading \(project rule/,
    );
    // 110 PAR is where it begins; up to 1.25 times that is near enough (project rule), and only a part is above.
    expect(given.headline).toMatch(/Perhaps too bright \(watch\): up to 180 PAR.*110 PAR.*75 to 200/);
  });

  it('is not known where no reading is near', () => {
    const given = ada.say('/light range coral:torch at:110 x 25 x 10 cm');
    expect(textOf(given)).toMatch(/no reading near here: none within 30 cm/);
    expect(given.next.some(({ command }) => command === 'light measured')).toBe(true);
  });

  it('is for the asker alone, and each has their own', () => {
    const at = '30 x 25 x 10 cm';
    expect(withDefaults(rangeCommand, { coral: 'torch', at }, { nowMs: 0, keep: ada.keep }).hidden).toBe(
      true,
    );
    expect(withDefaults(rangeCommand, { coral: 'torch' }, { nowMs: 0, keep: ada.keep }).hidden).toBe(false);
    expect(textOf(bea.say(`/light range coral:torch at:${at}`))).toMatch(/no reading near here/);
    expect(problemOf(() => range({ coral: 'torch', at })).field).toBe('tank');
    const none = { ...ada.keep, tankInUse: () => undefined };
    const problem = problemOf(() => rangeCommand.run({ coral: 'torch', at }, { nowMs: 0, keep: none }));
    expect([problem.field, problem.choices]).toEqual(['at', []]);
  });
});
