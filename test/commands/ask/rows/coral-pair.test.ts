import { describe, expect, it } from 'vitest';
import { coralPairRows } from '../../../../commands/ask/rows/coral-pair.ts';
import { tankPlanRows } from '../../../../commands/ask/rows/tank-plan.ts';
import { askedBack, rowAnswer } from './asked.ts';

/** Distances of the pair rules; their bases stand in core/corals/pair-rules.ts, most common practice. */
describe('two corals side by side', () => {
  it.each([
    ['can my torch and hammer sit next to each other', /^Not touching: Torch .* 20 cm \(7\.9 in\)/],
    ['galaxea 20 cm from my favia, too close?', /^Too close: .*want 30 cm .* 20 cm .* is not enough/],
    ['torch 6 inches from a goniopora enough?', /^Watch them: 15\.2 cm \(6 in\)/],
    ['zoas next to palys ok?', /^Mostly yes: zoanthids seldom sting .*palytoxin/],
    ['is the monti cap going to shade my acans', /^In time, yes/],
    ['can i mix softies and sps', /^One tank, not one rock: keep 10 cm/],
    ['is 4 inches enough between my hammer and a bubble coral', /^(?!.*anemone)/],
    ['two torches together fine?', /^Usually yes: two pieces of Torch coral/],
    ['my nem and my duncan side by side?', /^Not touching: Duncan coral and .*anemone want 25 cm/],
    ['how far should galaxea be from other corals', /^Galaxy coral, sting: severe.*keep 32 cm clear/],
    ['hammer, torch and frogspawn all on one rock?', /want 20 cm .*Of all these they want most room/],
  ])('%s', (text, pattern) => expect(rowAnswer(coralPairRows, 'pair', text)?.headline).toMatch(pattern));

  it('says the same either way round', () => {
    const [one, other] = ['torch next to a favia?', 'favia next to a torch?'].map((text) =>
      rowAnswer(coralPairRows, 'pair', text),
    );
    expect(one?.facts[0]).toEqual(other?.facts[0]);
  });

  it('asks which two', () =>
    expect(askedBack(coralPairRows, 'pair', 'can these two touch')).toBe('Which two corals?'));
});

describe('a plan', () => {
  it.each([
    [
      'torch, galaxea, zoas and a leather in a 20 gallon, does that work',
      /^Not touching: .*Fits: Torch coral/,
    ],
    ['which corals go in a low light nano for a beginner', /kinds fit \(first year of reefs, 60 PAR\)/],
    ['which corals do not sting', /^No coral is safe with all others/],
  ])('%s', (text, pattern) => expect(rowAnswer(tankPlanRows, 'tank-plan', text)?.headline).toMatch(pattern));

  it('names who must stand apart', () => {
    const plan = rowAnswer(tankPlanRows, 'tank-plan', 'plan: torch left, galaxea right, xenia in the middle');
    expect(plan?.facts.some(({ label }) => label.includes(' + '))).toBe(true);
  });
});
