import { significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Heard, Said } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { rateDays } from '../../core/words/roles.ts';
import { isTankSize, tankVolume } from '../../core/words/tank-volume.ts';
import { amountCommand } from '../dose/amount.ts';
import { dripCommand } from '../waterchange/drip.ts';
import { goalCommand } from '../waterchange/goal.ts';
import { onceCommand } from '../waterchange/once.ts';
import { routineCommand } from '../waterchange/routine.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';
import { mixes } from '../waterchange/level.ts';

const CHANGE = ['water ?changes?', 'wc', 'w/c', 'change', 'changes', 'swap', 'exchange'];

/** "no3 climbs 4 ppm a week, I change 15 %": where it settles. */
export const routineIntent: Intent = (heard, context) => {
  const rise = heard.said.find(({ role, parameter }) => role === 'rise' && mixes(parameter));
  const share = shareOf(heard);
  if (rise === undefined || share === undefined) return undefined;
  const goal = heard.said.find(({ role, parameter }) => role === 'goal' && parameter === rise.parameter);
  const input = {
    of: rise.parameter,
    rise: `${rise.mention.text} a ${periodName(rise.everyDays)}`,
    share: share.text,
    every: share.every,
    goal: goal?.mention.text,
  };
  return call(routineCommand, input, context);
};

/** "two pumps swap 30 % over a day, is it the same?": slow against batch. */
export const dripIntent: Intent = (heard, context) => {
  const slow = says(
    heard,
    'pumps?',
    'continuous',
    'continuously',
    'bit by bit',
    'drip',
    'dosing pump',
    'slowly over',
  );
  const share = shareOf(heard);
  if (!slow || share === undefined || !says(heard, ...CHANGE)) return undefined;
  return call(dripCommand, { share: share.text, volume: tankVolume(heard)?.text }, context);
};

/** "nitrates 80, 20 % a week, how many till 10", or with no share named: how much in one change. */
export const changeIntent: Intent = (heard, context) => {
  const fall = falling(heard);
  if (fall === undefined) return undefined;
  const share = shareOf(heard);
  const { of, now, goal, fresh } = fall;
  const volume = tankVolume(heard)?.text;
  if (share !== undefined) {
    return call(
      goalCommand,
      { of, now, goal, share: share.text, every: share.every, volume, fresh },
      context,
    );
  }
  if (!says(heard, ...CHANGE) && (of === 'alkalinity' || of === 'calcium' || of === 'magnesium')) {
    return call(amountCommand, { of, now, goal, volume }, context);
  }
  return call(onceCommand, { of, now, goal, volume, fresh }, context);
};

/** "I did a 10 gallon change on my 55, nitrate was 40": what it should read now. */
export const doneIntent: Intent = (heard, context) => {
  const amount = heard.mentions.find(
    (m) =>
      isTankSize(m) &&
      (/^\s*(?:water ?change|wc|change|swap)/.test(heard.text.slice(m.end)) ||
        /\b(?:water ?change|wc|changed?|swap(?:ped)?)(?: (?:of|is|was|about))?\s*$/.test(
          heard.text.slice(0, m.start),
        )),
  );
  const share = amount === undefined ? shareOf(heard)?.text : undefined;
  const now = heard.said.find(
    ({ parameter, role }) => mixes(parameter) && (role === 'plain' || role === 'before'),
  );
  const fresh = heard.said.find(({ parameter, role }) => parameter === now?.parameter && role === 'fresh')
    ?.mention.text;
  if (
    now === undefined ||
    (amount ?? share) === undefined ||
    !(says(heard, ...CHANGE, 'i (?:do|did)') || fresh !== undefined)
  )
    return undefined;
  const tank = tankVolume(heard);
  const other = heard.mentions.find((m) => m !== amount && isTankSize(m));
  const input = {
    of: now.parameter,
    now: now.mention.text,
    amount: amount?.text,
    share,
    volume: tank?.mention === amount ? other?.text : tank?.text,
    fresh,
  };
  return call(onceCommand, input, context);
};

interface Falling {
  readonly of: ParameterId;
  readonly now: string;
  readonly goal: string;
  readonly fresh: string | undefined;
}

/** A parameter said with a reading and a lower level to reach. */
function falling(heard: Heard): Falling | undefined {
  const byRole = (of: Said['parameter'], ...roles: readonly Said['role'][]): Said | undefined =>
    heard.said.find(({ parameter, role }) => parameter === of && roles.includes(role));
  for (const of of heard.said.map(({ parameter }) => parameter)) {
    if (!mixes(of)) continue;
    const reach = byRole(of, 'goal');
    const goal = reach ?? byRole(of, 'before');
    const now = byRole(of, 'plain') ?? (reach === undefined ? undefined : byRole(of, 'before'));
    if (goal === undefined || now === undefined || goal.mention.value >= now.mention.value) continue;
    return { of, now: now.mention.text, goal: goal.mention.text, fresh: byRole(of, 'fresh')?.mention.text };
  }
  return undefined;
}

/** The share of water changed, and how often where it is said. */
function shareOf(heard: Heard): { text: string; every: string | undefined } | undefined {
  const mention = heard.mentions.find((m) => is(m, 'share'));
  if (mention === undefined) return litresOf(heard);
  const tail = heard.text.slice(mention.end, mention.end + 40);
  const days =
    rateDays(tail) ??
    (/^\s*(?:each|every|on)\s+(?:mon|tues|wednes|thurs|fri|satur|sun)day/.test(tail) ? 7 : undefined);
  return { text: mention.text, every: days === undefined ? undefined : `${days} days` };
}

/** "10 gal a week on 60 gal": the share from two volumes. */
function litresOf(heard: Heard): { text: string; every: string } | undefined {
  const tank = tankVolume(heard);
  const changed = heard.mentions.find(
    (m) => isTankSize(m) && rateDays(heard.text.slice(m.end)) !== undefined,
  );
  const days = changed === undefined ? undefined : rateDays(heard.text.slice(changed.end));
  if (tank === undefined || changed === undefined || days === undefined || changed === tank.mention)
    return undefined;
  const share = (100 * litres(changed.text)) / litres(tank.text);
  return share > 0 && share < 100 ? { text: `${significant(share, 4)} %`, every: `${days} days` } : undefined;
}

function litres(text: string): number {
  return readQuantity('volume', text, { field: 'volume' }).value;
}

function periodName(days: number | undefined): string {
  if (days === 1) return 'day';
  return days === 7 || days === undefined ? 'week' : 'month';
}
