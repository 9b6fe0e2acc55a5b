import { continuousEqualToBatch, fractionOfContinuous } from '../../change/continuous.ts';
import { afterChanges } from '../../change/exchange.ts';
import { settles } from '../../change/routine.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import type { Judge, Verdict } from '../claim.ts';
import { has, is, tied, type Amount, type Stated } from '../stated.ts';
import { against, againstNumber } from '../verdict.ts';

const WEEK_DAYS = 7;

const sharesIn = ({ amounts }: Stated): readonly Amount[] => amounts.filter((amount) => is(amount, 'share'));

/** Differences in a share of water a keeper would not see; this project's own choice, percentage points. */
function byPoints(claimed: number, right: number): Verdict {
  const off = Math.abs(claimed - right);
  if (off <= 0.25) return 'right';
  return off <= 2 ? 'roughly right' : 'wrong';
}

/** "4 x 20 % = 80 %": shares of water changes do not add up. */
export const sumOfChanges: Judge = (stated) => {
  const [times, first, last, other] = stated.amounts;
  if (times === undefined || first === undefined || last === undefined || other !== undefined)
    return undefined;
  const isCount = (is(times, 'bare') || is(times, 'times')) && Number.isInteger(times.value);
  if (!isCount || !is(first, 'share') || !is(last, 'share')) return undefined;
  const [count, each, sum] = [times.value, first.value, last.value];
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
      words: `it takes out ${volume((real / 100) * waterL)} of old water where ${volume((meant / 100) * waterL)} was meant; nitrate 40 mg/L becomes ${fixed(0.4 * left, 1)}, not ${fixed(0.4 * (100 - meant), 1)}`,
      low: (real / 100) * waterL,
      high: (real / 100) * waterL,
      unit: 'L',
    }),
    sources: ['mixing'],
  };
};

/** "30 % continuous is the same as 30 % batch". */
export const continuousAsBatch: Judge = (stated) => {
  const shares = sharesIn(stated);
  const [first, second = first] = shares;
  if (first === undefined || second === undefined || shares.length !== stated.amounts.length)
    return undefined;
  if (!has(stated, 'sums.drip', 'times.slowly', 'times.always', 'gear.doser') || has(stated, 'manner.may'))
    return undefined;
  if (!has(stated, 'sums.same') && !tied(stated, first.end, second.start, 'is')) return undefined;
  const [slow, batch] = [first.value, second.value];
  if (slow <= 0 || slow > 99 || batch <= 0 || batch > 99) return undefined;
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
      words: `it takes out ${volume((real / 100) * waterL)} of old water against ${volume((batch / 100) * waterL)} in one change; pass ${volume(equal * waterL)} to equal it`,
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

/** What a change takes out, by its name. */
function takenOut(stated: Stated): string | undefined {
  const id = stated.parameters.find((each) => each === 'nitrate' || each === 'phosphate');
  return id ?? (has(stated, 'sums.nutrients') ? 'nutrients' : undefined);
}

/** "a 25 % water change drops nitrate by 25 %". */
export const changeCuts: Judge = (stated) => {
  const what = takenOut(stated);
  const [share, cut, other] = stated.amounts;
  if (what === undefined || share === undefined || !is(share, 'share') || other !== undefined)
    return undefined;
  if (!has(stated, 'deeds.changesWater', 'parts.change')) return undefined;
  const halved = has(stated, 'sums.half') ? 50 : Number.NaN;
  const claimed = cut === undefined ? halved : is(cut, 'share') ? cut.value : Number.NaN;
  const changed = share.value;
  if (!(claimed > 0 && claimed <= 100 && changed > 0 && changed <= 100)) return undefined;
  const after = afterChanges({ now: 40, fresh: 0, fraction: changed / 100 });
  return {
    kind: 'what a change takes out',
    rule: `a ${changed} % water change lowers ${what} by ${claimed} %`,
    verdict: byPoints(claimed, changed),
    figure: `it lowers what the new water does not hold by ${changed} %, for that day`,
    besides: 'whatever the tank makes goes on rising, and new water with some in it does less',
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
export const changeTakesTo: Judge = (stated) => {
  const what = takenOut(stated);
  const [share] = sharesIn(stated);
  const levels = stated.amounts.filter((amount) => is(amount, 'bare') || is(amount, 'concentration'));
  const [from, to] = levels;
  if (what === undefined || share === undefined || share.everyDays !== undefined) return undefined;
  if (from === undefined || to === undefined || stated.amounts.length !== 3) return undefined;
  if (!has(stated, 'deeds.changesWater', 'parts.change') || has(stated, 'manner.askMuch')) return undefined;
  const [changed, now, claimed] = [share.value, from.value, to.value];
  if (!(changed > 0 && changed < 100 && now > 0 && claimed > 0 && claimed < now)) return undefined;
  const after = afterChanges({ now, fresh: 0, fraction: changed / 100 });
  return {
    kind: 'what a change leaves',
    rule: `a ${changed} % water change takes ${what} from ${now} to ${claimed}`,
    verdict: againstNumber(claimed, after),
    figure: `a ${changed} % change takes ${now} to ${significant(after, 3)} where the new water holds none`,
    working: [`${now} x (1 - ${fixed(changed / 100, 3)}) = ${significant(after, 4)}`],
    steps: ['Test the new salt water once: what it holds comes back with every change.'],
    sources: ['mixing'],
  };
};

/** "5 ppm a week with 10 % weekly changes tops out at 50": where a routine settles. */
export const settlesAt: Judge = (stated) => {
  const [share] = sharesIn(stated);
  const levels = stated.amounts.filter((amount) => is(amount, 'bare') || is(amount, 'concentration'));
  const rise = levels.find(({ everyDays }) => everyDays === WEEK_DAYS);
  const level = levels.find((amount) => amount !== rise);
  if (share === undefined || rise === undefined || level === undefined) return undefined;
  if (stated.amounts.length !== 3 || !has(stated, 'sums.settles')) return undefined;
  const [p, f, claimed] = [rise.value, share.value, level.value];
  if (p <= 0 || f <= 0 || f >= 100 || claimed <= 0) return undefined;
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
