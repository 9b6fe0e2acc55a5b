import { describe, expect, it } from 'vitest';
import { calibrated, MOST_FALSE_ALARMS, MOST_WRONG, type Unseen } from '../../../core/language/calibrate.ts';

/** A message of a kind that is taken for another with a probability. */
function read(kind: Unseen['line']['kind'], name: string, probability: number, calm = false): Unseen {
  return { line: { text: kind, kind, ...(calm ? { calm } : {}) }, kinds: [{ name, probability }] };
}

describe('thresholds', () => {
  /** Of a hundred messages; one more is too many. */
  const allowed = Math.floor(100 * MOST_WRONG);
  const right = Array.from({ length: 100 - allowed - 1 }, () => read('feed', 'feed', 0.9));

  it('answers from where no more of a hundred are wrong than are allowed', () => {
    expect(allowed).toBeGreaterThan(0);
    const wrong = Array.from({ length: allowed + 1 }, (_, at) => read('feed', 'flow', 0.3 + at / 20));
    // All but the one at 0.3 are allowed.
    expect(calibrated([...right, ...wrong]).answer).toBe(0.31);
  });

  it('alarms from where no more of the calm messages do than are allowed', () => {
    const calm = Array.from({ length: 50 }, (_, at) => read('feed', 'urgent-water', at / 100, true));
    const alarms = Math.floor(50 * MOST_FALSE_ALARMS);
    expect(alarms).toBeGreaterThan(0);
    // Those that may are at 0.49 and right below it.
    expect(calibrated([...right, ...calm]).danger).toBe((50 - alarms) / 100);
  });
});
