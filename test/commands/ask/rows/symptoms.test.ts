import { describe, expect, it, test } from 'vitest';
import { symptomRows } from '../../../../commands/ask/rows/symptoms.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { symptomCard, type SymptomId } from '../../../../core/care/symptoms/cards.ts';
import { answered } from './answered.ts';

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
  ['fish-ill', 'clownfish is breathing fast', 'fish gasping'],
];

describe('something looks wrong', () => {
  it.each(cards)('%s: %s', (kind, text, id) => {
    const given = answered(symptomRows, kind, text);
    expect(given?.read).toContain(`seen: ${symptomCard(id).label}`);
  });

  test('a coral that may hold a poison has its caution first', () => {
    const given = answered(symptomRows, 'coral-symptom', 'my zoas have been shut for 4 days');
    expect(given?.cautions[0]).toContain('palytoxin');
  });

  test('readings said beside it are judged and count as signs', () => {
    const given = answered(
      symptomRows,
      'coral-symptom',
      'all my corals closed up at once, salinity 1.021, alk 8',
    );
    // 1.021 at 25/25 is 27.9 ppt (Fofonoff & Millard 1983): below the 33 to 36 of common practice
    expect(given?.facts.find(({ label }) => label === 'salinity')?.verdict).toMatch(/urgent|low/);
    expect(given?.facts[0]?.value).toContain('you said: salinity 27.9 ppt');
  });

  test('an ill fish without a card: do no harm, what to tell, and a vet', () => {
    const given = answered(symptomRows, 'fish-ill', 'tang will not eat for 3 days');
    expect(given?.headline).toContain('Change nothing big and dose nothing yet');
    expect(given?.cautions.join(' ')).toContain('vet');
  });

  test('where several are about as likely they are offered', () => {
    const given = answered(symptomRows, 'coral-symptom', 'my acros have white tips since the new lamp');
    const labels = given?.next.map(({ label }) => label) ?? [];
    expect(given?.read).toContain(`seen: ${symptomCard('white tips').label}`);
    expect(labels).toContain(`Or rather: ${symptomCard('pale on top').label}`);
  });
});
