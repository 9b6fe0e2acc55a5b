import { describe, expect, it } from 'vitest';
import { fitStory } from '../../../core/language/fit-story.ts';
import { inStory, type StoryShares } from '../../../core/language/in-story.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import type { Line } from '../../../core/language/labelled.ts';
import { framesOf, type Frame } from '../../../core/language/frame.ts';
import { saidOf } from './said-of.ts';

/** Messages that stand alone, half of them dangers, and stories that tell and come back to one danger. */
const alone: readonly Line[] = Array.from({ length: 200 }, (_, at) => ({
  text: `alone ${at}`,
  kind: at % 2 === 0 ? 'urgent-water' : 'told',
}));
const stories: readonly Line[] = Array.from({ length: 40 }, (_, story) =>
  (['urgent-water', 'told', 'told', 'urgent-water', 'told'] as const).map((kind, at) => ({
    text: `${story} ${at}`,
    kind,
    story: `s${story}`,
  })),
).flat();
const quiet: readonly Line[] = Array.from({ length: 40 }, (_, story) =>
  Array.from(
    { length: 5 },
    (__, at) => ({ text: `q ${story} ${at}`, kind: 'told', story: `q${story}` }) as const,
  ),
).flat();

function shares(...lines: readonly (readonly Line[])[]): StoryShares {
  return fitStory([{ head: { batch: 'invented', voices: 'one' }, lines: lines.flat() }]);
}

function frames(...kinds: readonly (readonly [Kind, number])[]): readonly Frame[] {
  const { scanned, said } = saidOf('and the pump is running');
  return framesOf({
    given: scanned.text,
    scanned,
    said,
    kinds: kinds.map(([name, probability]) => ({ name, probability })),
    cards: () => [],
  });
}

describe('a message in the course of a story', () => {
  it('counts what comes up anew and what comes up again', () => {
    const { 'urgent-water': danger, told } = shares(alone, stories, quiet);
    expect(danger?.fresh).toBeLessThan(danger?.again ?? 0);
    expect(told?.again).toBeGreaterThan(1);
  });

  it('never makes a new danger less likely than by a fixed part', () =>
    expect(shares(alone, quiet)['urgent-water']?.fresh).toBeGreaterThanOrEqual(0.4));

  it('is a danger again sooner than a new one, and probabilities still add up to one', () => {
    const learnt = shares(alone, stories, quiet);
    const read = frames(['urgent-water', 0.5], ['told', 0.5]);
    const danger = (before: readonly Kind[]): number =>
      inStory(read, before, learnt).find(({ kind }) => kind === 'urgent-water')?.probability ?? 0;
    expect(danger(['urgent-water'])).toBeGreaterThan(danger(['told']));
    const sum = inStory(read, ['told'], learnt).reduce((all, { probability }) => all + probability, 0);
    expect(sum).toBeCloseTo(1, 6);
  });

  it('is as it stands alone where nothing was learnt of stories', () =>
    expect(inStory(frames(['told', 0.7], ['log', 0.3]), ['told'], {})[0]?.probability).toBeCloseTo(0.7, 6));
});
