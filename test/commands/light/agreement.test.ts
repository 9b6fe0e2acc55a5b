import { namedCoral } from '../../../core/corals/named.ts';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { lightVerdict } from '../../../core/corals/light-verdict.ts';
import { origins } from '../../../core/corals/scene.ts';
import { scan } from '../../../core/language/tokens.ts';
import { run, twoPersons } from '../coral/person.ts';
import { textOf } from '../text.ts';
import { sentencesOf } from '../../../core/words/sentence.ts';

const AT = '20 x 20 x 20 cm';
const any = fc.record({
  entry: fc.constantFrom(...corals),
  origin: fc.constantFrom(...origins),
  isNew: fc.boolean(),
  ppfd: fc.integer({ min: 1, max: 600 }),
});

it('says the same of one light at one coral in every command that speaks of it', { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(any, ({ entry, origin, isNew, ppfd }) => {
      const coral = tellingName(entry);
      const said = lightVerdict(entry, origin, isNew ? 'new' : 'settled', ppfd);
      const [ada] = twoPersons();
      const since = isNew ? 'today' : '2025-01-03';
      run(ada.keep, 'coral add', { coral, at: AT, size: '3 cm', origin, since });
      const changed = run(ada.keep, 'light measured', { at: AT, par: String(ppfd) });
      const checked = run(ada.keep, 'coral check', { coral: '1' });
      const label = said.verdict === 'settled' ? 'room' : 'light';
      if (said.verdict === 'settled') {
        expect(checked.facts.some((fact) => fact.label === 'light')).toBe(false);
        expect(checked.steps.join()).not.toMatch(/of the light away|Brighten/);
      } else {
        const found = checked.facts.find((fact) => fact.label === label);
        expect(found).toMatchObject({ verdict: said.verdict });
        expect(found?.value).toContain(said.headline);
        for (const sentence of sentencesOf(said.advice))
          expect(checked.steps.some((step) => step.includes(sentence))).toBe(true);
      }
      expect(textOf(changed)).toContain(said.headline);
    }),
    { numRuns: 150 },
  );
});

/** The range is left to the facts where the line is too long. */
function bare(line: string): string {
  return line.replace(/ \(range .*?\)/, '');
}

it('/light range says for a new piece what the one verdict says', () => {
  fc.assert(
    fc.property(any, ({ entry, origin, ppfd }) => {
      const said = lightVerdict(entry, origin, 'new', ppfd);
      const given = run(twoPersons()[0].keep, 'light range', {
        coral: tellingName(entry),
        origin,
        reading: `${ppfd} PAR`,
      });
      expect(bare(given.headline)).toContain(bare(said.headline.replace(':', ` (${said.verdict}):`)));
      expect(given.steps.join(' ').startsWith(said.advice)).toBe(true);
      if (said.side === 'fits') expect(given.steps.join()).not.toMatch(/move|dimmer spot|raise it in steps/i);
    }),
    { numRuns: 200 },
  );
});

it('plain words say for a new piece what the one verdict says', () => {
  // "Deepwater" in a name is read as where it grew.
  const asked = corals.filter((entry) => {
    if (/deep/i.test(tellingName(entry))) return false;
    const { names } = scan(`is 100 par too much for a ${tellingName(entry)}`);
    const found = names.flatMap(({ class: kind, id }) => (kind === 'coral' ? (namedCoral(id) ?? []) : []));
    return entry.photosynthetic && found.length === 1 && found[0]?.entries.length === 1;
  });
  expect(asked.length).toBeGreaterThan(60);
  fc.assert(
    fc.property(fc.constantFrom(...asked), fc.integer({ min: 5, max: 600 }), (entry, ppfd) => {
      const said = lightVerdict(entry, 'unknown', 'new', ppfd);
      const given = ask(
        `is ${ppfd} par too much for a ${tellingName(entry)}?`,
        { nowMs: 0 },
        { as: 'par-ok' },
      );
      expect(given.headline).toMatch(new RegExp(`^${said.headline.replaceAll(/[()]/g, '\\$&')}`));
      expect(given.steps.join(' ').startsWith(said.advice)).toBe(true);
    }),
    { numRuns: 200 },
  );
});
