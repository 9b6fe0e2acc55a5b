import { amount, isWideSwing, usualSwing, type Move } from '../../core/water/move.ts';
import { firstLabel, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';

/** What a day does by itself, and what narrows it. Common practice, no source. */
const DAYS: Readonly<
  Partial<Record<ParameterId, { readonly why: string; readonly steps: readonly string[] }>>
> = {
  ph: {
    why: 'carbon dioxide piles up in the dark',
    steps: [
      'Compare only readings of one hour: pH is lowest before the lights come on, highest before they go off.',
      'To narrow it: fresh air to the skimmer or a window, more movement at the surface, a refugium lit by night.',
      'Test alkalinity; dose nothing for the pH alone.',
    ],
  },
  temperature: {
    why: 'lamps and room by day, the heater by night',
    steps: [
      'Read both with one second thermometer, at the same two hours.',
      'Too warm by day: a fan across the surface, lamps higher, the room shaded. Never ice in the tank.',
      'Too cold by night: a heater that is strong enough, on its own thermostat.',
    ],
  },
};

/** A day and a night of a level that swings by itself: whether it is wide, why, and what narrows it. */
export function swingAnswer(move: Move, read: readonly string[], state: Answer | undefined): Answer {
  const { id, by } = move;
  const { why = '', steps = [] } = DAYS[id] ?? {};
  const usual = amount(id, usualSwing(id) ?? 0);
  const verdict = isWideSwing(move)
    ? `more than the usual ${usual}: narrow it`
    : `no more than is usual, up to about ${usual}: nothing to act on`;
  return answer({
    headline: `${firstLabel(id)} swings by ${amount(id, by)} in the day, ${verdict}.`,
    read,
    facts: [
      { label: 'the hour does it', value: why },
      {
        label: 'swing of a day',
        value: `${amount(id, by)} (up to about ${usual} is usual, common practice)`,
        verdict: isWideSwing(move) ? 'wide' : 'fine',
      },
      ...(state?.facts ?? []),
    ],
    steps,
    dangers: state?.dangers ?? [],
    cautions: state?.cautions ?? [],
    sources: ['practice'],
  });
}
