import { describe, expect, it } from 'vitest';
import { hurtCards } from '../../core/care/hurt/cards.ts';
import { ask, reached } from '../ask.ts';
import type { Taken } from '../../commands/ask/answer-message.ts';
import { findCommand } from '../../commands/index.ts';
import { textOf } from './text.ts';

const context = { nowMs: 0 };

function isReached(text: string, patterns: readonly RegExp[]): boolean {
  return reached(text, context)
    .map(textOf)
    .some((one) => patterns.every((pattern) => pattern.test(one)));
}

describe('ask', () => {
  const table: [string, RegExp[]][] = [
    [
      'raise alk 7.2 to 8.4 in 75 gal with soda ash',
      [/^6\.4 g of sodium carbonate/, /3\.2 g a day for 2 days/, /283\.9 L/],
    ],
    ['nitrate 80, 55g, 20% a week, how many to 10', [/^10 changes of 20 %/, /US gallons/]],
    ['1.030 refractometer 55 gal want 1.026', [/Over 4 days/, /13\.2 %/]],
    ['Raise ALK from 7,2 dKH to 8,4 dKH in 284 L with soda ash', [/^6\.4 g/]],
    ['alk 7.2 want 8.4 soda ash', [/per 100 L/, /2\.27 g/]],
    ['whats 53 mS/cm', [/35(?:\.0)? ppt/]],
    ['lower calcium from 520 to 450 50 gal', [/No dose lowers|lower/i]],
    [
      'how much baking soda to raise kh by 2 in 40 gallons',
      [/^9\.06 g of sodium bicarbonate/, /4\.53 g a day/],
    ],
    ['my alk is 6.5 whats up', [/alkalinity low/]],
    ['temp is 84', [/°F/, /28\.9 °C/, /high/]],
    ['how many gallons is 30x18x20 inches', [/44 US gal/, /177 L to the rim/, /taken as inside/]],
    ['8.5 dkh in meq', [/3\.032 meq\/L/]],
    ['how long to go from 100 par to 200', [/week/]],
    ['is 300 par too much', [/^300 PAR is bright light/, /large-polyp/]],
    ['ca 380 mg 1250 alk 7.5 sg 1.024 no3 20 po4 .2', [/380 mg\/L/, /1250 mg\/L/, /31\.9 ppt/]],
    ['how much salt for 5 gallons', [/681 g/]],
    ['salinity 38 ppt want 35 in 300L', [/swap/, /7\.9 %/]],
    [
      'my alk went from 8.2 to 7.1 over 3 days in 90 gal, what do i dose daily',
      [/about 0\.37 dKH of alkalinity a day/],
    ],
    ['1.5 tsp baking soda in 40 gallons', [/raises alkalinity by 1\.3 to 1\.7 dKH/]],
    ['how much kalk for 2 gallons of top off', [/7\.57 L of limewater|2 US gal/]],
    ['what does 20 g of soda ash do in 150 gal', [/raises alkalinity by 1\.86 dKH/]],
    ['1 tsp baking soda per 5 gal raises 1 dkh right?', [/raises alkalinity by 7\.1 to 8\.8 dKH/]],
    ['light 50% gives 120 par want 200', [/83 %/, /week/]],
  ];
  it.each(table)('%s', (text, patterns) => expect(isReached(text, patterns)).toBe(true));

  describe('what is misread', () => {
    const question = 'i did a 10 gallon water change on my 55 and nitrate was 40 what is it now';
    const patterns = [/18\.2 %/, /32\.7 mg\/L/];

    // Asked back what 40 is.
    it.fails('asks back', () => expect(isReached(question, patterns)).toBe(true));

    it('is right once that is chosen', () => {
      const chosen = ask(question, context).next.find(({ label }) => label === 'nitrate: what it was before');
      const given = textOf(ask(question, context, chosen?.input as Taken));
      for (const pattern of patterns) expect(given).toMatch(pattern);
    });
  });

  it('says what it read, as a command that can be typed', () => {
    expect(ask('raise alk 7.2 to 8.4 in 75 gal with soda ash', context).echo).toBe(
      '/dose amount of:alkalinity now:7.2 goal:8.4 with:soda ash volume:75 gal',
    );
  });

  it.each([
    'how much erythromycin for 40 gal cyano',
    'copper dose 0.5 ppm 100 gal ich',
    '12% peroxide dose for 75 gal bryopsis',
    'praziquantel dosage for 20 gallons',
  ])('gives no amount: %s', (text) => {
    const shown = reached(text, context).map(textOf);
    for (const one of shown) expect(one).not.toMatch(/\d(?:\.\d+)? ?(?:mL|mg|drops)\b/);
    expect(
      shown.some((one) => /never give|work out no|work nothing out/.test(one)),
      shown[0],
    ).toBe(true);
  });

  it('gives no amount of bleach, and says where alone it belongs', () => {
    const told = textOf(ask('how much bleach for 50 gallons', context));
    expect(told).toMatch(
      /^Only on empty gear and dead rock, outdoors, bleach by its label; .*chlorine strip reads 0/,
    );
    expect(told).toMatch(/Acid on rock: not needed: it burns people/);
    expect(told).toMatch(/Bleach never with acid, vinegar or ammonia: poisonous gas/);
    expect(told).toMatch(/Gloves, goggles/);
    for (const one of reached('how much bleach for 50 gallons', context))
      expect(textOf(one)).not.toMatch(/\d(?:\.\d+)? ?(?:mL|L|mg|drops|cups?|gal)\b/);
  });

  it.each([
    ['i swallowed limewater', 'swallowed'],
    ['got soda ash in my eye', 'in the eye'],
    ['metallic taste after fragging zoas', 'palytoxin breathed'],
    ['got shocked by my sump', 'electric shock'],
  ] as const)('puts the person first: %s', (text, hurt) =>
    expect(ask(text, context).headline).toBe(hurtCards[hurt].first),
  );

  it('keeps the unit of a low reading that a volume follows', () => {
    expect(ask('alk 2 dkh 75 gal want 9 baking soda', context).headline).not.toMatch(/5\.61/);
    expect(textOf(ask('ca 420 kh 8.1 mg 1350 no3 5', context))).toMatch(/8\.1 dKH/);
  });

  it('never turns a fall into a rise', () => {
    for (const text of [
      'lower calcium from 520 to 450 50 gal',
      'bring alk down from 12 to 9 in 100 L with soda ash',
    ]) {
      expect(textOf(ask(text, context))).not.toMatch(/\d g of /);
    }
  });

  it('asks exactly one question back, and each choice answers it', () => {
    const asked = ask('raise alk 3.1 to 3.4 in 75 gal with soda ash', context);
    expect(asked.headline.endsWith('?')).toBe(true);
    const choices = asked.next.filter(({ label }) => label !== 'Not that');
    expect(choices.length).toBeGreaterThan(1);
    for (const { command, input } of choices) {
      expect(findCommand(command.split(' '))?.run(input, context).headline).toMatch(/g of sodium carbonate/);
    }
  });

  it('says in at most five lines what it can do when it does not know', () => {
    for (const text of ['hello', 'my fish is sad', 'I have 3 fish and 12 snails']) {
      const lost = ask(text, context);
      expect(1 + lost.steps.length + lost.read.length).toBeLessThanOrEqual(5);
    }
  });

  it('reads the beginning of what is too long, and says so', () =>
    expect(ask(`got soda ash in my eye. ${'and so on '.repeat(500)}`, context).read[0]).toMatch(
      /only the beginning/,
    ));
});
