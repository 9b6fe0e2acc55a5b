import { describe, expect, it } from 'vitest';
import type { Drawn } from '../../bot/discord/message/drawn.ts';
import { render } from '../../bot/discord/message/render.ts';
import { lazyReader } from '../../bot/reader/load.ts';
import { openStore } from '../../bot/store/open.ts';
import { ask, reached } from '../ask.ts';
import { claimCommand } from '../../commands/claim.ts';
import { cards } from '../../commands/claim/card-for.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { findCommand } from '../../commands/index.ts';
import { primerIds } from '../../core/care/primers/primer.ts';
import { rules } from '../core/claims/rules.ts';
import { asked } from '../corpus.ts';
import { checkMessage } from '../discord/standin/check-message.ts';
import { spot, type Issue } from '../discord/standin/spot.ts';
import { textOf } from './text.ts';

const context = { nowMs: 0, reader: lazyReader };
const kinds = new Set(rules.map(([, kind]) => kind));
const claim = (rule: string, volume?: string) =>
  claimCommand.run({ rule, ...(volume === undefined ? {} : { volume }) }, context);

function issuesOf(what: Drawn): readonly Issue[] {
  const issues: Issue[] = [];
  checkMessage(spot(issues), { ...render(what).body }, { way: 'reply', files: [] });
  return issues;
}

describe('/claim', () => {
  it('gives the verdict as a word, the right figure, the sum and what it does to this tank', () => {
    const given = claim('1 tsp baking soda per 5 gal raises 1 dKH', '75 gal');
    expect(given.headline).toMatch(
      /^Wrong: 1 tsp of sodium bicarbonate in 5 US gal raises alkalinity by 7\.1 to 8\.8 dKH/,
    );
    expect(given.read[0]).toBe(
      'the rule as: 1 tsp of sodium bicarbonate per 5 US gal raises alkalinity by 1 dKH',
    );
    expect(textOf(given)).toMatch(/15 tsp of sodium bicarbonate in 283\.9 L/);
    expect(given.working.join('\n')).toMatch(/11\.9 meq per gram/);
    expect(given.steps.join('\n')).toMatch(/Not in one day: at most 1 dKH/);
    expect(issuesOf(given)).toEqual([]);
  });

  it('takes a tank named in the rule before the one given', () => {
    expect(textOf(claim('4 x 20 % = 80 % in my 400 L tank', '100 L'))).toMatch(/236\.2 L of old water/);
  });

  it('takes the net volume of the tank in use', () => {
    const keep = openStore({ file: ':memory:', nowMs: () => 0 }).keepFor('100000000000000001');
    keep.addTank({
      name: 'Pantry',
      kind: 'mixed',
      netVolumeL: 400,
      volumeBasis: 'counted',
      units: {},
      targets: {},
    });
    const given = runWithDefaults(claimCommand, { rule: '4 x 20 % = 80 %' }, { ...context, keep });
    expect(textOf(given)).toMatch(/236\.2 L of old water where 320 L was meant/);
    expect(given.read.join('\n')).toMatch(/Pantry/);
  });

  it('says per 100 L where no volume is known', () => {
    expect(claim('you need 20x turnover').read.join('\n')).toMatch(/per 100 L/);
  });

  it('is honest about what it does not know, and shows what can be checked', () => {
    const given = claim('corals can hear music');
    expect(given.headline).toBe('I do not know that rule, so I cannot say whether it is right.');
    expect(given.next.length).toBeGreaterThan(5);
    for (const { command, input } of given.next) {
      expect(findCommand(command.split(' '))?.run(input, context).headline).toMatch(
        /^(?:Right|Roughly right|Wrong|It depends):/,
      );
    }
    expect(issuesOf(given)).toEqual([]);
  });

  it.each([
    'copper at 0.5 ppm dose for ich',
    'dose 5 mg of erythromycin per gallon',
    'add 1 ml of bleach per 10 gal',
  ])('judges no medicine and no disinfectant: %s', (rule) =>
    expect(claim(rule).headline).toMatch(/never give a dose|Not into a tank/),
  );

  it('warns of lime', () =>
    expect(claim('kalk at 2 tsp per gallon').dangers.join(' ')).toMatch(/caustic.*eye protection/i));

  it.each(['1 ml per 10 gal peroxide', '1 ml of 35% peroxide per 10 gal'])(
    'works no amount out of a rule for peroxide: %s',
    (rule) => {
      const { headline, facts, working, steps, dangers } = claim(rule, '75 gal');
      const told = [headline, ...facts.map(({ value }) => value), ...working, ...steps].join('\n');
      expect(told.replace(rule, '')).not.toMatch(/\d (?:mL|mg|g)\b/);
      expect(dangers.join(' ')).toMatch(/shrimps.*zoanthids.*Never a stronger solution/);
    },
  );
});

describe('the card beside a verdict', () => {
  it.each([
    ['soda ash is twice as strong as baking soda', 'alkalinity and calcium'],
    ['1.025 is 35 ppt', 'salinity'],
    ['4 x 20 % = 80 %', 'water changes'],
    ['lux / 50 = par', 'PAR'],
    ['ppm is dKH x 17.9', 'units'],
    ['kalk at 2 tsp per gallon', 'limewater'],
    ['half a cup of salt per gallon', 'mixing salt water'],
  ])('%s: %s', (rule, card) => {
    const [next] = claim(rule).next;
    expect(next?.input).toEqual({ card });
    expect(findCommand(['primer'])?.run(next?.input ?? {}, context).headline).toMatch(/[a-z]/);
  });

  it('is never one that does not exist', () => {
    const real: readonly string[] = primerIds;
    for (const [kind, card] of Object.entries(cards)) {
      expect(kinds).toContain(kind);
      expect(real).toContain(card);
    }
  });
});

/** How a message that was judged as a rule is read. */
const AS_CLAIM = /^\/claim rule:/;

/** The verdict among what can be reached from a message. */
const verdicts = (text: string) =>
  reached(text, context).find(({ echo }) => AS_CLAIM.test(echo ?? ''))?.headline;

describe('plain words', () => {
  const framed: readonly [string, RegExp][] = [
    ['is it true that 4 x 20 % is 80 %?', /^Wrong: 4 changes of 20 % replace 59 %/],
    ['someone told me 1 tsp of baking soda per 5 gal raises alk by 1 dkh', /^Wrong: .*7\.1 to 8\.8 dKH/],
    ['read that every 10 ppm ca goes with 1 meq/l', /^Wrong: .*20 mg\/L/],
    ['i heard 1.025 is 35 ppt', /^Wrong: 1\.025 is 33\.2 ppt/],
    ['rule of thumb: half a cup of salt per gallon', /^It depends: .*273 to 295 g/],
    ['they say 30% continuous is the same as a 30% batch', /^Wrong: .*25\.9 %/],
    ['people say lux / 50 = par', /^It depends: no one divisor/],
    ['someone told me soda ash is twice as strong as baking soda', /^Wrong: .*0\.631 g/],
    ['i was told kalk at 2 tsp per gallon', /^Roughly right: /],
    ['is it a myth that more kalk powder makes it stronger', /^Wrong: /],
    ['baking soda raises ph, true?', /^Wrong: .*down at first/],
    ['someone told me to dose 1 tsp of soda ash per 50 gal', /^It depends: .*0\.75 to 1\.5 dKH/],
  ];
  it.each(framed)('%s', (text, pattern) => {
    const given = ask(text, context);
    expect(given.headline).toMatch(pattern);
    expect(given.echo).toMatch(AS_CLAIM);
  });

  /** Where it may be a rule or a sum, the verdict is one of what is offered. */
  const unsure: readonly [string, RegExp][] = [
    ['no3 to n is 4.4 right?', /^Right: NO3 = NO3-N x 4\.427/],
    ['is it right that you only need half as much soda ash as baking soda', /^Wrong: .*0\.631 g/],
  ];
  it.each(unsure)('is offered: %s', (text, pattern) => expect(verdicts(text)).toMatch(pattern));

  /** Known misses: taken for units, for readings, for flow. */
  const misread: readonly [string, RegExp][] = [
    ['my friend said ppm is dkh x 17.9', /^Right: .*17\.85/],
    ['po4 to p is 3.06, is that right?', /^Right: /],
    ['20x turnover', /^It depends: /],
  ];
  it.fails.each(misread)('%s', (text, pattern) => expect(verdicts(text)).toMatch(pattern));

  it('reads the asker’s own tank out of the sentence', () => {
    const given = ask('is it true that 4 x 20 % is 80 % in my 400 L tank?', context);
    expect(given.echo).toMatch(/^\/claim rule:.* volume:400 l$/);
    expect(textOf(given)).toMatch(/236\.2 L of old water/);
  });

  it('says honestly that it does not know a rule it was asked to judge', () => {
    expect(ask('is it true that corals like music?', context).headline).toMatch(/^I do not know that rule/);
  });

  const JUDGED = /^(?:(?:Right|Roughly right|Wrong|It depends): |I do not know that rule)/;

  it.each([
    asked.A16,
    asked.B05,
    asked.B11,
    asked.B15,
    asked.C03,
    asked.C05,
    asked.G05,
    asked.G07,
    asked.B01,
    asked.A03,
    'raise alk 7.2 to 8.4 in 75 gal with soda ash',
    'how much salt for 5 gallons',
    'someone told me to raise alk, mine is 7.2 want 8.4 in 75 gal with soda ash',
    'i read that nitrate 80 is bad, 55 gal, 20 % a week, how many to get to 10',
    'how much erythromycin, is it true 5 mg per gallon is right?',
  ])('leaves a sum to the sum: %s', (text) => expect(ask(text, context).headline).not.toMatch(JUDGED));

  /** Known miss: the amount is judged as if it were the rule. */
  it.fails.each([asked.A12])('leaves a sum to the sum: %s', (text) =>
    expect(ask(text, context).headline).not.toMatch(JUDGED),
  );
});
