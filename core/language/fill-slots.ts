import { slotsOf } from './case.ts';
import { changedWater } from './changed-water.ts';
import { withClockTimes } from './clock-times.ts';
import { headsOf } from './heads.ts';
import { isDose, isSpoon, isWater } from './kinds-of-said.ts';
import { percentSaid } from './lamp-setting.ts';
import { levelsSaid, mainParameter, parametersNamed } from './levels-said.ts';
import type { ParameterId } from '../water/parameter.ts';
import { isLight, type Said } from './said.ts';
import { withoutUndefined, type Slots } from './slots.ts';
import type { Scanned } from './tokens.ts';
import { boxOf } from './box-said.ts';
import { bottleSaid } from './bottle-said.ts';
import { saltsSaid } from './salt-said.ts';
import { strengthText } from './strength-said.ts';
import { withPerLitre } from './per-litre.ts';
import { namesBack } from './taken-back.ts';
import { systemVolume, withUnit } from './system-volume.ts';

/** What of a message fills slots, and the numbers no slot took. */
export interface Filled {
  readonly slots: Slots;
  readonly rest: readonly Said[];
}

/** Puts every number and name of a message into the slots it fills. Nothing is made up; what fits nowhere is the rest. */
export function fillSlots(scanned: Scanned, read: readonly Said[]): Filled {
  const all = withClockTimes(scanned, withPerLitre(scanned, read));
  const bottle = bottleSaid(scanned, all);
  const said = all.filter((one) => bottle?.from.includes(one) !== true);
  const used = new Set<Said>(bottle?.from);
  const take = (one: Said | undefined): string | undefined => {
    if (one !== undefined) used.add(one);
    return one?.text;
  };
  const takeAll = (found: readonly Said[]): readonly string[] | undefined => {
    found.forEach((one) => used.add(one));
    return listOr(found.map(({ text }) => text));
  };
  const listed = (test: (one: Said) => boolean): readonly string[] | undefined => takeAll(said.filter(test));
  const found = levelsSaid(scanned, said);
  found.forEach(({ from }) => used.add(from));
  const levels = found.map(({ level }) => level);
  const ofBottle = bottle === undefined ? [] : [bottle.bottle.of];
  const salted = namesOf(scanned, 'salt');
  const of = mainParameter(levels, [...ofBottle, ...parametersNamed(scanned)], salted);
  const salts = saltsSaid(scanned, of);
  const back = namesBack(scanned.tokens);
  const mine = levels.filter((level) => level.of === of);
  const volume = systemVolume(scanned, said);
  volume?.from.forEach((one) => used.add(one));
  const waterRate = said.find(
    (one) => one.part === 'rate' && isWater(one) && !isDose(one) && one.of !== 'substance',
  );
  const heads = headsOf(scanned, said);
  take(heads?.from);
  const amounts = said.filter(
    (one) => one.part === 'amount' || (one.part === 'rate' && (one.of === 'substance' || isDose(one))),
  );
  const strengths = said.filter(({ part }) => part === 'strength');
  const parts = said.filter(({ part }) => part === 'part');
  // "half of the 80 litres": the volume, and not the half.
  const container = parts.find(({ number }) => number.kinds.includes('volume')) ?? parts[0];
  const litresOf = (one: Said | undefined): string | undefined =>
    take(one) === undefined || one === undefined ? undefined : withUnit(scanned, said, one);
  const { shares, volumes, everyDays, from } = changedWater(scanned, said, volume?.text);
  from.forEach((one) => used.add(one));
  // "24/7" is always, and no span.
  const spans = listed((one) => one.part === 'span' && !scanned.text.startsWith('24/7', one.number.start));
  const lengths = said.filter(
    ({ part, number }) =>
      (part === 'length' || part === 'system') &&
      !number.kinds.includes('volume') &&
      !number.kinds.includes('heads'),
  );
  const other = (id: ParameterId): string | undefined =>
    levels.findLast((level) => level.of === id && (level.part === 'now' || level.part === 'was'))?.text;
  const percents = said.filter((one) => percentSaid(one, said) !== undefined);
  takeAll(percents);
  const slots = {
    of,
    levels: listOr(levels),
    ...slotsOf(mine, of),
    was: mine.find(({ part }) => part === 'was')?.text,
    volume: volume?.text,
    container: litresOf(container),
    salt: salts[0],
    salts: listOr(salts),
    amount: amounts[0]?.text,
    amounts: takeAll(amounts),
    amountDays: amounts.find(({ number }) => number.everyDays !== undefined)?.number.everyDays,
    strength: take(strengths[0]) === undefined ? undefined : strengthText(strengths),
    bottle: bottle?.bottle,
    share: shares[0],
    shares: listOr(shares),
    changed: volumes[0],
    batches: listOr(volumes),
    everyDays,
    waterRate: take(waterRate),
    waterRateDays: waterRate?.number.everyDays,
    span: spans?.[0],
    spans,
    watts: listed(({ number }) => number.kinds.includes('watts')),
    batteries: listed(({ number }) =>
      number.kinds.some((kind) => kind === 'wattHours' || kind === 'ampHours'),
    ),
    percents: listOr(percents.flatMap((one) => percentSaid(one, said) ?? [])),
    hours: listed(
      (one) =>
        one.part === 'setting' &&
        !percents.includes(one) &&
        (one.number.kinds.includes('days') || one.number.kinds.length === 0),
    ),
    light: listed(
      (one) => isLight(one) && !percents.includes(one) && !one.number.kinds.includes('illuminance'),
    ),
    lux: listed((one) => isLight(one) && one.number.kinds.includes('illuminance')),
    lengths: takeAll(lengths),
    box: boxOf(lengths),
    heads: heads?.text,
    temperature: other('temperature'),
    otherTemperature: take(said.find(({ part }) => part === 'othertemp')),
    salinity: of === 'salinity' ? undefined : other('salinity'),
    corals: listOr(namesOf(scanned, 'coral').filter((name) => !back.has(name))),
    counts: listOr(
      said
        .filter(
          (one) =>
            one.part === 'none' &&
            !used.has(one) &&
            (one.number.kinds.length === 0 || one.number.kinds.includes('times')),
        )
        .map(({ number }) => number.value),
    ),
    moments: listOr(said.filter(({ part }) => part === 'moment').map(({ text }) => text)),
  };
  if (
    strengths.length > 1 &&
    (slots.strength !== strengths[0]?.text || strengths.some(({ number }) => isSpoon(number.unit)))
  )
    strengths.forEach((one) => used.add(one));
  return {
    slots: withoutUndefined(slots),
    rest: said.filter((one) => !used.has(one) && one.part !== 'none' && one.part !== 'moment'),
  };
}

function namesOf({ names }: Scanned, kind: 'salt' | 'coral'): readonly string[] {
  return [...new Set(names.flatMap((name) => (name.class === kind ? [name.id] : [])))];
}

function listOr<T>(list: readonly T[]): T[] | undefined {
  return list.length === 0 ? undefined : [...list];
}
