import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import { lightFor, type CoralLight } from '../../../core/corals/light-need.ts';
import {
  judgedLight,
  lightVerdict,
  type LightVerdict,
  type Standing,
} from '../../../core/corals/light-verdict.ts';
import { origins } from '../../../core/corals/scene.ts';
import { kind } from './scenes.ts';

const standings: readonly Standing[] = ['new', 'settled'];
const DOWN = /shade|dimmer|take .* of the light away/i;
const UP = /brighten|raise it/i;

describe('lightVerdict', () => {
  // A torch: 75 to 200 PAR, a tank-grown piece begins at 110 (common practice, no source); by hand from there.
  it.each([
    ['tank-grown', 'new', 300, 'too bright', 'move', 110, 190],
    ['tank-grown', 'settled', 300, 'too bright', 'move', 200, 100],
    ['tank-grown', 'new', 150, 'too bright to begin with', 'watch', 110, 40],
    ['tank-grown', 'settled', 150, 'fits', 'settled', 150, 0],
    ['tank-grown', 'new', 60, 'too dim', 'watch', 110, 50],
    ['deep', 'new', 70, 'fits', 'settled', 70, 0],
    ['deep', 'new', 130, 'too bright to begin with', 'move', 65, 65],
  ] as const)('%s, %s, at %d PAR: %s', (origin, standing, ppfd, word, verdict, goalPpfd, offPpfd) => {
    expect(lightVerdict(kind('torch-coral'), origin, standing, ppfd)).toMatchObject({
      word,
      verdict,
      goalPpfd,
      offPpfd,
      sure: true,
    });
  });

  it('is too dim at 60 PAR for what begins at 95, by 35 PAR, and asks for more light', () => {
    const need = { ...lightFor(kind('torch-coral'), 'tank-grown'), lowPpfd: 75, startPpfd: 95 };
    const said = judgedLight(need, 'new', { lowPpfd: 60, ppfd: 60, highPpfd: 60 });
    expect(said.headline).toBe('Too dim: 60 PAR, 35 PAR under the 95 PAR it begins near (range 75 to 200).');
    expect(said.advice).toMatch(/^Brighten .* to 95 PAR first: 35 PAR more/);
  });

  it('never calls too dim what lives by food, and shades it where algae would settle', () => {
    expect(lightVerdict(kind('sun-coral'), 'wild', 'new', 0).word).toBe('fits');
    expect(lightVerdict(kind('sun-coral'), 'wild', 'new', 200)).toMatchObject({
      word: 'too bright',
      verdict: 'watch',
    });
  });
});

/** What is wrong with one verdict: word, sentence, advice and numbers that do not agree. */
function faultsOf({
  side,
  sure,
  verdict,
  word,
  figurePpfd,
  goalPpfd,
  offPpfd,
  headline,
  advice,
}: LightVerdict): string[] {
  const faults: string[] = [];
  const claim = (ok: boolean, what: string): void => {
    if (!ok) faults.push(what);
  };
  const text = `${headline} ${advice}`;
  claim(!/-\d|NaN|Infinity|undefined/.test(text), 'a negative or broken number');
  claim(headline.toLowerCase().startsWith(`${word}:`), 'the sentence does not begin with the word');
  claim(headline.includes(`${figurePpfd} PAR`), 'the sentence leaves out the figure');
  claim(offPpfd >= 0, 'a negative distance');
  for (const [, percent] of text.matchAll(/(\d+) %(?! a week)/g))
    claim(Number(percent) >= 1 && Number(percent) <= 99, `${percent} % of the light`);
  if (side === 'fits') {
    claim(verdict === 'settled' && word === 'fits', 'fits, yet not settled');
    claim(offPpfd === 0 && goalPpfd === figurePpfd, 'fits, yet off');
    claim(advice === 'Leave it there.', 'fits, yet told to change');
  } else {
    claim(verdict !== 'settled', 'wrong, yet settled');
    claim(word.includes(side), 'word on the other side');
    claim(side === 'bright' ? figurePpfd > goalPpfd : figurePpfd < goalPpfd, 'goal on the other side');
    claim(Math.abs(offPpfd - Math.abs(figurePpfd - goalPpfd)) < 0.06, 'another distance');
    claim(
      headline.includes(`${offPpfd} PAR ${side === 'bright' ? 'over' : 'under'} the ${goalPpfd} PAR`),
      'other numbers',
    );
    claim(
      !sure || DOWN.test(advice) === (side === 'bright'),
      'asks for less where it is dim, or not where bright',
    );
    claim(
      !sure || UP.test(advice) === (side === 'dim'),
      'asks for more where it is bright, or not where dim',
    );
    claim(
      sure || advice.startsWith('Measure at the coral first') || /overhang/.test(advice),
      'unsure, yet changed',
    );
  }
  return faults;
}

/** Every seventh from 0 to 600 PAR, and each side of every border a verdict can have. */
function lightsFor({ lowPpfd, highPpfd, startPpfd }: CoralLight): readonly number[] {
  const borders = [lowPpfd, highPpfd, startPpfd, startPpfd * 1.25, startPpfd * 2];
  const around = borders.flatMap((border) => [-1, 0, 1].map((step) => Math.round(border) + step));
  const sevenths = Array.from({ length: 87 }, (_, index) => index * 7);
  return [...new Set([...sevenths, 600, ...around])].filter((ppfd) => ppfd >= 0).sort((a, b) => a - b);
}

const order = ['dim', 'fits', 'bright'];

it('agrees in word, sentence, advice and number for every coral, origin and standing from 0 to 600 PAR', () => {
  const faults = new Set<string>();
  for (const entry of corals) {
    for (const origin of origins) {
      const need = lightFor(entry, origin);
      for (const standing of standings) {
        const at = (ppfd: number) => judgedLight(need, standing, { lowPpfd: ppfd, ppfd, highPpfd: ppfd });
        const verdicts = lightsFor(need).map(at);
        const where = `${entry.id}, ${origin}, ${standing}`;
        for (const said of verdicts)
          for (const fault of faultsOf(said)) faults.add(`${where}, ${said.figurePpfd} PAR: ${fault}`);
        const sides = verdicts.map(({ side }) => order.indexOf(side));
        if (sides.some((side, i) => side < (sides[i - 1] ?? 0)))
          faults.add(`${where}: brighter is judged dimmer`);
        if (standing === 'new' && at(need.startPpfd).side !== 'fits')
          faults.add(`${where}: its own start does not fit`);
      }
    }
  }
  expect([...faults].slice(0, 10)).toEqual([]);
});

it('agrees where the light is known only as a range, and never moves a coral for a perhaps', () => {
  const light = fc.double({ min: 0, max: 600, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...corals),
      fc.constantFrom(...origins),
      fc.constantFrom(...standings),
      fc.tuple(light, light, light),
      (entry, origin, standing, values) => {
        const [lowPpfd = 0, ppfd = 0, highPpfd = 0] = [...values].sort((a, b) => a - b);
        const need = lightFor(entry, origin);
        const said = judgedLight(need, standing, { lowPpfd, ppfd, highPpfd });
        expect(faultsOf(said)).toEqual([]);
        if (!said.sure) expect(said.verdict).not.toBe('move');
        if (highPpfd > need.highPpfd + 1) expect(said.side).toBe('bright');
      },
    ),
    { numRuns: 5000 },
  );
});
