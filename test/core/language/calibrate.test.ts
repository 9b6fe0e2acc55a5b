import { describe, expect, it } from 'vitest';
import { calibrated, type Unseen } from '../../../core/language/calibrate.ts';

/** A message of a kind that is taken for another with a probability. */
function read(kind: Unseen['line']['kind'], name: string, probability: number, calm = false): Unseen {
  return { line: { text: kind, kind, ...(calm ? { calm } : {}) }, kinds: [{ name, probability }] };
}

describe('thresholds', () => {
  const right = Array.from({ length: 96 }, () => read('feed', 'feed', 0.9));

  it('answers from where at most three of a hundred are wrong', () => {
    const wrong = [0.3, 0.5, 0.6, 0.8].map((p) => read('feed', 'flow', p));
    // 3 of 100 at or above 0.5 are allowed, 4 of 100 at 0.3 are not.
    expect(calibrated([...right, ...wrong]).answer).toBe(0.31);
  });

  it('alarms from where at most two of a hundred calm messages do', () => {
    const calm = Array.from({ length: 50 }, (_, at) => read('feed', 'urgent-water', at / 100, true));
    // One of fifty may: the one at 0.49.
    expect(calibrated([...right, ...calm]).danger).toBe(0.49);
  });
});
