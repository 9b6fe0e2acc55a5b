import { describe, expect, it, test } from 'vitest';
import { symptomRows } from '../../../../commands/ask/rows/symptoms.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { symptomCard, type SymptomId } from '../../../../core/care/symptoms/cards.ts';
import { rowAnswer } from './asked.ts';

const cards: readonly (readonly [Kind, string, SymptomId])[] = [
  ['coral-symptom', 'my hammer is melting with brown slime', 'brown jelly'],
  ['coral-symptom', 'my zoas have been shut for 4 days', 'zoanthids shut'],
  ['coral-symptom', 'frogspawn heads fall off and drift', 'polyps float'],
  ['coral-symptom', 'my leather is shiny and closed for a week', 'waxy leather'],
  ['coral-symptom', 'something ate my zoas at night', 'white spots'],
  ['coral-symptom', 'the duncan touches the hammer and has a white edge', 'dead strip'],
  ['coral-symptom', 'everything is closed and looks awful', 'many at once'],
  ['algae-pest', 'red slime over the sand', 'red slime'],
  ['algae-pest', 'long green hair on the rocks', 'green hair'],
  ['algae-pest', 'flatworms on my mushrooms', 'flatworms'],
  ['algae-pest', 'tiny bugs on the glass', 'small bugs'],
  ['algae-pest', 'oily film on the surface', 'surface film'],
  ['algae-pest', 'cloudy water after the new sand', 'cloudy'],
  ['fish-ill', 'clownfish with white spots', 'fish spots'],
  ['fish-ill', 'mandarin razor thin', 'fish thin'],
  ['fish-ill', 'copperband wont touch food, hollow belly', 'fish thin'],
  ['fish-ill', 'swimming on his side like hes drunk', 'fish swims oddly'],
  ['fish-ill', 'wrasse swims corkscrewing and sinks tail down', 'fish swims oddly'],
  ['fish-ill', 'the others tore his fins, he was attacked', 'fish wound'],
  ['fish-ill', 'clownfish is breathing fast', 'fish gasping'],
];

describe('something looks wrong', () => {
  it.each(cards)('%s: %s', (kind, text, id) => {
    const given = rowAnswer(symptomRows, kind, text);
    expect(given?.read).toContain(`seen: ${symptomCard(id).label}`);
  });

  test('a coral that may hold a poison has its caution first', () => {
    const given = rowAnswer(symptomRows, 'coral-symptom', 'my zoas have been shut for 4 days');
    expect(given?.dangers[0]).toContain('palytoxin');
  });

  test('readings said beside it are judged and count as signs', () => {
    const given = rowAnswer(
      symptomRows,
      'coral-symptom',
      'all my corals closed up at once, salinity 1.021, alk 8',
    );
    // 1.021 at 25/25 is 27.9 ppt (Fofonoff & Millard 1983): below the 33 to 36 of common practice
    expect(given?.facts.find(({ label }) => label === 'salinity')?.verdict).toMatch(/urgent|low/);
    expect(given?.facts[0]?.value).toContain('you said: salinity 27.9 ppt');
  });

  // The causes are common practice, no source.
  test.each([
    [
      "chunks missing out of the acan every morning. there's a new peppermint shrimp, am i daft blaming him",
      /^1\. bites of a fish, crab or shrimp/,
      /a new animal/,
    ],
    [
      'after I give the amino the hard coral makes spit, long threads, all of it',
      /^1\. food or amino acids/,
      /food or amino acids/,
    ],
    [
      'my zoas have been shut for 4 days, the three that open stand in the shade',
      /^1\. too much light/,
      /stand in the shade/,
    ],
  ])('a cause the message names comes first: %s', (text, label, reason) => {
    const first = rowAnswer(symptomRows, 'coral-symptom', text)?.facts[0];
    expect(first?.label).toMatch(label);
    expect(first?.value).toMatch(reason);
  });

  // The first steps are common practice, no source.
  test.each([
    [
      'eaten',
      'the rabbitfish keeps going for the zoas like salad, ragged bites',
      /^Part the animal you suspect/,
    ],
    ['slimy', 'after I give the amino the hard coral makes spit, long threads', /^Give half as much/],
    ['slimy', 'the leather hangs full of snot threads after i moved sand', /^Blow the sand off/],
    [
      'pale all over',
      "the hammer went pale. nobody's moved it and the lamp is the same",
      /leave the light as it is/,
    ],
    ['pale all over', 'my torch is pale all over since i moved it', /^Take the light down/],
    [
      'white tips',
      'acro branches have bare tips. got alk from 7 to 9.5 since sat',
      /^Raise alkalinity no further/,
    ],
    ['white tips', 'raised alk from 7 to 9.5 over 2 months, white ends on the acro', /^Look closely/],
  ])('what the message tells leads with its own first step: %s, %s', (_, text, headline) =>
    expect(rowAnswer(symptomRows, 'coral-symptom', text)?.headline).toMatch(headline),
  );

  test('an age that was told is not asked for', () => {
    const given = rowAnswer(symptomRows, 'algae-pest', 'brown dust over everything, tank is 5 weeks old');
    expect(given?.read).toContain('How old is the tank? under three months');
    expect(given?.facts[2]).toMatchObject({ value: expect.stringMatching(/How does it sit/) });
  });

  test('the caution of palytoxin stands there once', () => {
    const given = rowAnswer(symptomRows, 'coral-symptom', 'my zoas have been shut for 4 days');
    expect(given?.dangers.filter((text) => text.includes('May hold palytoxin'))).toHaveLength(1);
  });

  // Torch and flowerpot coral: 75 to 200 PAR (common practice, core/corals).
  test('a light that was read at the coral is judged', () => {
    const low = rowAnswer(symptomRows, 'coral-symptom', '95 par on the goni, bit low?');
    expect(low?.headline).toMatch(/^Fits: 95 PAR/);
    const bright = rowAnswer(symptomRows, 'coral-symptom', 'my torch is bleaching, 400 par at it');
    expect(bright?.facts[0]).toMatchObject({ label: 'torch at 400 par', verdict: 'move' });
    expect(bright?.facts[1]?.value).toContain('you said: 400 par, too bright');
  });

  test('an ill fish without a card: do no harm, what to tell, and a vet', () => {
    const given = rowAnswer(symptomRows, 'fish-ill', 'tang will not eat for 3 days');
    expect(given?.headline).toContain('Change nothing big and dose nothing yet');
    expect(given?.cautions.join(' ')).toContain('vet');
  });

  test('where several are about as likely they are offered', () => {
    const given = rowAnswer(symptomRows, 'coral-symptom', 'my acros have white tips since the new lamp');
    const labels = given?.next.map(({ label }) => label) ?? [];
    const [one, other] = [symptomCard('white tips').label, symptomCard('pale on top').label];
    const [seen, offered] = given?.read.includes(`seen: ${one}`) === true ? [one, other] : [other, one];
    expect(given?.read).toContain(`seen: ${seen}`);
    expect(labels).toContain(`Or rather: ${offered}`);
  });
});
