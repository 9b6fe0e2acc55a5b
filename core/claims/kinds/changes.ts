import { continuousEqualToBatch, fractionOfContinuous } from '../../change/continuous.ts';
import { afterChanges } from '../../change/exchange.ts';
import { settles } from '../../change/routine.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import type { Recogniser, Verdict } from '../claim.ts';
import { IS, NUM, numbersIn } from '../rule-text.ts';
import { against, againstNumber } from '../verdict.ts';

const PERCENT = String.raw`\s*%`;

/** Differences in a share of water a keeper would not see; this project's own choice, percentage points. */
function byPoints(claimed: number, right: number): Verdict {
  const off = Math.abs(claimed - right);
  if (off <= 0.25) return 'right';
  return off <= 2 ? 'roughly right' : 'wrong';
}

/** "4 x 20 % = 80 %": shares of water changes do not add up. */
export const sumOfChanges: Recogniser = ({ text }) => {
  const found = numbersIn(
    text,
    new RegExp(
      String.raw`(?<![\d.])(\d{1,3})\s*(?:x|times|\*|water changes of|changes of|separate|weekly|daily)?\s*${NUM}${PERCENT}(?:\s*(?:water\s*)?(?:changes?|wcs?))?(?:\s+(?:a|per|each) (?:day|week))?(?:${IS}|\s*(?:replaces?|removes?|swaps?|changes?|exchanges?|takes out|adds up to|add up to|comes to)\s*(?:all|about)?\s*)(?:an?\s+)?${NUM}${PERCENT}`,
    ),
  );
  if (found === undefined) return undefined;
  const [count = 0, each = 0, sum = 0] = found;
  if (count < 2 || each <= 0 || each >= 100 || sum <= 0 || sum > 1000) return undefined;
  const left = afterChanges({ now: 100, fresh: 0, fraction: each / 100 }, count);
  const real = 100 - left;
  const meant = Math.min(sum, 100);
  return {
    kind: 'sum of water changes',
    rule: `${count} changes of ${each} % replace ${sum} % of the water`,
    verdict: byPoints(sum, real),
    figure: `${count} changes of ${each} % replace ${fixed(real, 1)} % of the old water, because each one also takes out new water`,
    working: [`1 - (1 - ${fixed(each / 100, 3)})^${count} = ${fixed(real / 100, 4)}`],
    following: (waterL) => ({
      words: `in ${volume(waterL)} it takes out ${volume((real / 100) * waterL)} of old water where ${volume((meant / 100) * waterL)} was meant; a nitrate of 40 mg/L becomes ${fixed(0.4 * left, 1)}, not ${fixed(0.4 * (100 - meant), 1)}`,
      low: (real / 100) * waterL,
      high: (real / 100) * waterL,
      unit: 'L',
    }),
    sources: ['mixing'],
  };
};

const SLOW =
  /\b(?:continuous(?:ly)?|drip(?:ped|ping)?|slow(?:ly)?|auto(?:matic)?|bit by bit|dosing pumps?|constant)\b/;

/** "30 % continuous is the same as 30 % batch". */
export const continuousAsBatch: Recogniser = ({ text }) => {
  if (!SLOW.test(text) || !/\b(?:same|equals?|equal|as good|as much)\b|=/.test(text)) return undefined;
  if (/\bif i\b|\bam i\b|\bcan i\b|\bshould i\b/.test(text)) return undefined;
  const [slow, batch = slow] = [...text.matchAll(new RegExp(`${NUM}${PERCENT}`, 'g'))].map((m) =>
    Number(m[1]),
  );
  if (slow === undefined || batch === undefined || slow <= 0 || slow > 99 || batch <= 0 || batch > 99)
    return undefined;
  const real = fractionOfContinuous(slow / 100) * 100;
  const equal = continuousEqualToBatch(batch / 100);
  return {
    kind: 'continuous and batch',
    rule: `${slow} % exchanged bit by bit is the same as one change of ${batch} %`,
    verdict: byPoints(batch, real),
    figure: `${slow} % passed through bit by bit takes out ${fixed(real, 1)} % of the old water; to equal one change of ${batch} %, pass ${fixed(equal * 100, 1)} %`,
    working: [
      `1 - e^-${fixed(slow / 100, 3)} = ${fixed(real / 100, 4)}`,
      `-ln(1 - ${fixed(batch / 100, 3)}) = ${fixed(equal, 4)}`,
    ],
    following: (waterL) => ({
      words: `in ${volume(waterL)} it takes out ${volume((real / 100) * waterL)} of old water against ${volume((batch / 100) * waterL)} in one change; pass ${volume(equal * waterL)} to equal it`,
      low: (real / 100) * waterL,
      high: (real / 100) * waterL,
      unit: 'L',
    }),
    steps: [
      'It still works well: little is lost and the tank stays steadier. Match the two pumps, or salinity drifts.',
    ],
    sources: ['mixing'],
  };
};

const SUBJECT = String.raw`(nitrates?|no3|phosphates?|po4|nutrients?|them|it|levels?|everything)`;

/** "a 25 % water change drops nitrate by 25 %". */
export const changeCuts: Recogniser = ({ text }) => {
  const found = new RegExp(
    String.raw`${NUM}${PERCENT}\s*(?:water\s*)?(?:change|wc)s?\s*(?:will\s+|always\s+)?(halves|cuts?|drops?|lowers?|reduces?|removes?|takes out)\s*(?:the\s+|your\s+)?${SUBJECT}(?:\s*(?:by|in))?\s*(?:${NUM}${PERCENT})?`,
  ).exec(text);
  if (found === null) return undefined;
  const [, share = '', verb = '', what = '', by] = found;
  const changed = Number(share);
  const claimed = by === undefined ? (verb === 'halves' ? 50 : Number.NaN) : Number(by);
  if (!(claimed > 0 && claimed <= 100 && changed > 0 && changed <= 100)) return undefined;
  const after = afterChanges({ now: 40, fresh: 0, fraction: changed / 100 });
  return {
    kind: 'what a change takes out',
    rule: `a ${changed} % water change lowers ${what} by ${claimed} %`,
    verdict: byPoints(claimed, changed),
    figure: `it lowers what the new water does not hold by ${changed} %, for that day; whatever the tank makes goes on rising, and new water with some in it does less`,
    working: [`40 mg/L x (1 - ${fixed(changed / 100, 2)}) = ${fixed(after, 1)} mg/L`],
    following: (waterL) => ({
      words: `changing ${volume((changed / 100) * waterL)} of ${volume(waterL)} takes a nitrate of 40 mg/L to ${fixed(after, 1)}; by the rule it would be ${fixed(40 * (1 - claimed / 100), 1)}`,
      low: after,
      high: after,
      unit: 'mg/L',
    }),
    steps: ['Test the new salt water once: it should read zero nitrate.'],
    sources: ['mixing'],
  };
};

/** "a 30 % water change takes nitrate from 20 to 14". */
export const changeTakesTo: Recogniser = ({ text }) => {
  const found = new RegExp(
    String.raw`${NUM}${PERCENT}\s*(?:water\s*)?(?:change|wc)s?\s*(?:will\s+|should\s+)?(?:takes?|brings?|drops?|lowers?|gets?|cuts?|reduces?)\s*(?:the\s+|your\s+|my\s+)?${SUBJECT}\s*(?:down\s+)?from\s*${NUM}\s*(?:ppm|mg\/l)?\s*(?:down\s+)?to\s*${NUM}`,
  ).exec(text);
  if (found === null) return undefined;
  const [, share = '', what = '', from = '', to = ''] = found;
  const [changed, now, claimed] = [Number(share), Number(from), Number(to)];
  if (!(changed > 0 && changed < 100 && now > 0 && claimed > 0 && claimed < now)) return undefined;
  const after = afterChanges({ now, fresh: 0, fraction: changed / 100 });
  return {
    kind: 'what a change leaves',
    rule: `a ${share} % water change takes ${what} from ${from} to ${to}`,
    verdict: againstNumber(claimed, after),
    figure: `a ${share} % change takes ${from} to ${significant(after, 3)} where the new water holds none`,
    working: [`${from} x (1 - ${fixed(changed / 100, 3)}) = ${significant(after, 4)}`],
    steps: ['Test the new salt water once: what it holds comes back with every change.'],
    sources: ['mixing'],
  };
};

/** "5 ppm a week with 10 % weekly changes tops out at 50": where a routine settles. */
export const settlesAt: Recogniser = ({ text }) => {
  if (
    !/\b(?:settles?|tops? out|levels? (?:off|out)|ends? (?:up )?at|peaks?|stays? (?:at|under|below)|never (?:goes )?(?:above|over))\b/.test(
      text,
    )
  )
    return undefined;
  const rise = numbersIn(text, new RegExp(String.raw`${NUM}\s*(?:ppm|mg\/l)\s*(?:a|per|each|every) week`));
  const share = numbersIn(text, new RegExp(`${NUM}${PERCENT}`));
  const level = numbersIn(
    text,
    new RegExp(
      String.raw`(?:at|under|below|above|over|out|off|peaks?)\s+(?:at\s+|about\s+)?${NUM}(?:\s*(?:ppm|mg\/l))?(?!\s*(?:%|ppm a|ppm per))`,
    ),
  );
  const [p, f, claimed] = [rise?.[0], share?.[0], level?.[0]];
  if (
    p === undefined ||
    f === undefined ||
    claimed === undefined ||
    p <= 0 ||
    f <= 0 ||
    f >= 100 ||
    claimed <= 0
  )
    return undefined;
  const { before, after } = settles({ fresh: 0, rise: p, fraction: f / 100 });
  return {
    kind: 'where a routine settles',
    rule: `+${p} mg/L a week with ${f} % changed weekly settles at ${claimed} mg/L`,
    verdict: againstNumber(claimed, before),
    figure: `it settles at ${significant(before, 3)} mg/L just before a change and ${significant(after, 3)} just after, with new water that holds none`,
    working: [`${p} / ${fixed(f / 100, 3)} = ${significant(before, 4)}`],
    following: (waterL) => ({
      words:
        `${volume((f / 100) * waterL)} a week in ${volume(waterL)} ends at ${significant(before, 3)} mg/L: ${against(before, claimed)} than the rule says`.replace(
          'as meant than',
          'as',
        ),
      low: before,
      high: before,
      unit: 'mg/L',
    }),
    sources: ['mixing'],
  };
};
