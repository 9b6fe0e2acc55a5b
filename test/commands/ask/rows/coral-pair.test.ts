import { describe, expect, it } from 'vitest';
import { coralPairRows } from '../../../../commands/ask/rows/coral-pair.ts';
import { tankPlanRows } from '../../../../commands/ask/rows/tank-plan.ts';
import { askedBack, rowAnswer } from './asked.ts';

/** Distances of the pair rules; their bases stand in core/corals/pair-rules.ts, most common practice. */
describe('two corals side by side', () => {
  it.each([
    ['can my torch and hammer sit next to each other', /^Not touching: Torch .* 20 cm/],
    ['galaxea 20 cm from my favia, too close?', /^Too close: .*want 30 cm .* 20 cm is not enough/],
    ['torch 6 inches from a goniopora enough?', /^Watch them: 15\.2 cm/],
    ['zoas next to palys ok?', /^Mostly yes: zoanthids seldom sting .*palytoxin/],
    ['is the monti cap going to shade my acans', /^In time, yes/],
    ['can i mix softies and sps', /^One tank, not one rock: keep 10 cm/],
    ['is 4 inches enough between my hammer and a bubble coral', /^(?!.*anemone)/],
    ['two torches together fine?', /^Usually yes: two pieces of Torch coral/],
    ['my nem and my duncan side by side?', /^Not touching: Duncan coral and .*anemone want 25 cm/],
    ['how far should galaxea be from other corals', /^Galaxea, sting: severe.*keep 32 cm clear/],
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
      /^Keep Torch coral and Galaxea 30 cm .*The others fit/,
    ],
    ['which corals go in a low light nano for a beginner', /kinds fit \(first year of reefs, 60 PAR\)/],
    ['which corals do not sting', /^No coral is safe with all others/],
  ])('%s', (text, pattern) => expect(rowAnswer(tankPlanRows, 'tank-plan', text)?.headline).toMatch(pattern));

  it('names who must stand apart', () => {
    const plan = rowAnswer(tankPlanRows, 'tank-plan', 'plan: torch left, galaxea right, xenia in the middle');
    expect(plan?.facts.some(({ label }) => label.includes(' + '))).toBe(true);
  });

  it('takes what stands there already for neighbours, and what is asked for as the wish', () => {
    const text =
      '3 foot tank, leather dead centre, star polyps on their own island. is there room for a couple of lps up the right hand end, what else would you fit';
    const plan = rowAnswer(tankPlanRows, 'tank-plan', text);
    expect(plan?.echo).toContain('kind:large-polyp beside:leather, star polyps');
    // 10 cm between soft and stony: Griffith 1997, as in softBesideStony.
    expect(plan?.headline).toMatch(/kinds fit \(beside leather/);
    expect(plan?.facts[0]?.value).toMatch(/^One tank, not one rock: keep 10 cm [^.]*\.$/);
    expect(plan?.headline).not.toContain('Fits:');
    expect(plan?.facts.map(({ label }) => label)).not.toContain('Toadstool leather');
  });

  it('a light said of one coral, and its rock, are not those of all', () => {
    const text =
      "sand bed, and I want a hammer left, zoanthids on the centre rock and perhaps two Acropora on top where it's 300 PAR. what would still fit in the right-hand corner?";
    const plan = rowAnswer(tankPlanRows, 'tank-plan', text);
    expect(plan?.read).toContain('300 par as the light of acropora alone');
    expect(plan?.echo).not.toMatch(/par:|ground:/);
    expect(plan?.facts[0]?.label).toBe('acropora at 300 par');
  });

  it('a light of the spot asked about counts', () =>
    expect(
      rowAnswer(tankPlanRows, 'tank-plan', 'i have a torch and zoas, what else fits at 120 par?')?.headline,
    ).toMatch(/kinds fit \(120 PAR, beside torch, zoas\)/));

  it.each([
    [
      '90 cm tank, leather left on an island, in front on sand acans, far back xenia. what else fits',
      /^(?!.*ground:)/,
    ],
    [
      'my nano is 30 litres, got zoas and a duncan. what can i put on the sand?',
      /ground:sand beside:zoas, duncan/,
    ],
    [
      '20 gallon cube, mushrooms and a frogspawn in already, what else goes in',
      /beside:mushrooms, frogspawn volume:20/,
    ],
    ['270 L, acropora and torches, PAR 90 to 280, what else fits', /^(?!.*par:)/],
  ])('size, ground and light told: %s', (text, echo) =>
    expect(rowAnswer(tankPlanRows, 'tank-plan', text)?.echo).toMatch(echo),
  );

  it('a middling light is a band', () =>
    expect(
      rowAnswer(tankPlanRows, 'tank-plan', '13.5 gal, lights kinda mid, what fits')?.read.join(),
    ).toMatch(/middle light, 80 to 160 PAR/));
});
