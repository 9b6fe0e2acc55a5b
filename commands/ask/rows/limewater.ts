import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { powderInWater } from '../../../core/language/powder-in-water.ts';
import { withUnit } from '../../../core/language/system-volume.ts';
import { Problem } from '../../../core/problem.ts';
import { significant } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import { call } from '../../called.ts';
import type { OwnContext } from '../../command.ts';
import { limewaterCommand } from '../../dose/limewater.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { attempt } from './attempt.ts';
import { under } from './led.ts';
import { waterEach } from './water-said.ts';

/** Limewater: how strong it is, what it brings in the top-off, what a vessel of it holds. */
export function limewaterOf(frame: Frame, context: OwnContext): Answer {
  return (
    strengthOf(frame, context) ??
    topOff(frame, context) ??
    batch(frame, context) ??
    cardAnswer(primer('limewater'))
  );
}

/** What was put in against what dissolves, where no use shall be covered. */
function strengthOf(frame: Frame, context: OwnContext): Answer | undefined {
  const {
    slots,
    reading: { scanned, said },
  } = frame;
  const mix = slots.levels === undefined ? powderInWater(scanned, said) : undefined;
  if (mix === undefined) return undefined;
  const daily = evaporated(frame);
  const { volume } = slots;
  const input = { amount: mix.water, powder: mix.powder, per: mix.water };
  return (
    attempt(() => call(limewaterCommand, { ...input, daily, volume }, context)) ??
    call(limewaterCommand, input, context)
  );
}

/** Limewater in what evaporates each day, against a use where one was said. */
function topOff(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots } = frame;
  const { rate, rateDays = 1, change, of, volume } = slots;
  const topOffADay = evaporated(frame);
  if (topOffADay === undefined) return undefined;
  const isNoTank = volume === undefined && context.keep?.tankInUse() === undefined;
  // "3 g per litre, or is 2 g all that dissolves": that needs no tank.
  if (isNoTank && slots.strength !== undefined && slots.levels === undefined)
    return call(limewaterCommand, { amount: topOffADay }, context);
  if (isNoTank) throw new Problem(say('ask.howMuchInSystem'), { field: 'volume' });
  const used = of === 'alkalinity' ? (rate ?? change) : undefined;
  const goal = used === undefined ? undefined : levelADay(used, rateDays);
  if (goal === undefined && volume === undefined) return undefined;
  return inVesselToo(frame, call(limewaterCommand, { amount: topOffADay, goal, volume }, context), context);
}

/** The top-off of a day: "3 L a day", also as a bare number in the unit of another volume. */
function evaporated({ slots, reading: { scanned, said } }: Frame): string | undefined {
  const each = waterEach(slots);
  if (each !== undefined) return eachDay(each.amount, each.days);
  const bare = said.find(
    ({ part, of, number }) =>
      part === 'rate' && of === 'nothing' && number.kinds.length === 0 && number.everyDays !== undefined,
  );
  return bare && eachDay(withUnit(scanned, said, bare), bare.number.everyDays ?? 1);
}

/** The spoons that the vessel named beside it can dissolve, where spoons are asked for. */
function inVesselToo(
  { slots: { container }, reading: { scanned } }: Frame,
  given: Answer,
  context: OwnContext,
): Answer {
  if (container === undefined || !met(scanned, 'manner.unitSpoon')) return given;
  const full = attempt(() => call(limewaterCommand, { amount: container }, context));
  return full === undefined ? given : under(full.headline, given, 'in the tank');
}

/** What a vessel of it can hold. */
function batch({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const { container, volume } = slots;
  const vessel = container ?? (met(scanned, 'parts.vessel') ? volume : undefined);
  return vessel === undefined ? undefined : call(limewaterCommand, { amount: vessel }, context);
}

/** "5.6 dKH" a week as "0.8 dKH". */
function levelADay(level: string, days: number): string {
  if (days === 1) return level;
  const { written, unit } = readQuantity('alkalinity', level, { field: 'goal', fallback: 'dKH' });
  return `${significant(written / days, 4)} ${unit === '' ? 'dKH' : unit}`;
}

/** "14 L" a week as "2 L". */
function eachDay(amount: string, days: number): string {
  if (days === 1) return amount;
  const { value } = readQuantity('volume', amount, { field: 'amount' });
  return `${significant(value / days, 3)} L`;
}
