import { describe, expect, it } from 'vitest';
import type { Moment } from '../../../core/language/case.ts';
import { cardTold, dangerTold, toldOf } from '../../../core/language/evidence.ts';

const moment = (likely: Moment['likely'], cards: Moment['cards'] = []): Moment => ({
  atMs: 0,
  kind: likely?.[0]?.kind ?? 'next-step',
  slots: {},
  likely,
  cards,
});

const story = [
  moment(
    [{ kind: 'coral-symptom', probability: 0.9 }],
    [
      { kind: 'coral-symptom', name: 'pale on top', probability: 0.5 },
      { kind: 'coral-symptom', name: 'white tips', probability: 0.3 },
    ],
  ),
  moment([{ kind: 'readings-ok', probability: 0.8 }]),
  moment(
    [{ kind: 'coral-symptom', probability: 0.4 }],
    [{ kind: 'coral-symptom', name: 'white tips', probability: 0.35 }],
  ),
];

describe('what a whole case speaks of', () => {
  it('is said by its plainest message, and more by each further one', () => {
    expect(toldOf(story, 'coral-symptom')).toBeGreaterThan(
      toldOf(story.slice(0, 1), 'coral-symptom') * 0.93 ** 2,
    );
    expect(toldOf(story, 'coral-symptom')).toBeGreaterThan(toldOf(story, 'readings-ok'));
    expect(toldOf(story, 'flow')).toBe(0);
  });

  it('adds up the cards of all messages', () => {
    expect(cardTold(story.slice(0, 1), 'coral-symptom')).toBe('pale on top');
    expect(cardTold(story, 'coral-symptom')).toBe('white tips');
    expect(cardTold(story, 'fish-ill')).toBeUndefined();
  });

  it('takes danger from several messages that each only may tell of it', () => {
    const perhaps = moment([{ kind: 'urgent-water', probability: 0.6 }]);
    expect(dangerTold([perhaps], 'urgent-water')).toBeCloseTo(0.6);
    expect(dangerTold([perhaps, perhaps], 'urgent-water')).toBeCloseTo(0.84);
    expect(dangerTold(story, 'person-hurt')).toBe(0);
  });
});
