import { fixed } from '../../core/quantity/format.ts';
import { printed, type OwnUnits } from '../../core/log/value.ts';
import { BEARABLE_C, type Judged } from '../../core/water/assess.ts';
import { loggable, type LoggableId } from '../../core/water/loggable.ts';

/** What to do about a reading that is off, after "it is below (above) 7 dKH: ". Common practice, no source. */
interface Advice {
  readonly low: string;
  readonly high: string;
}

const advice: Readonly<Partial<Record<LoggableId, Advice>>> = {
  temperature: {
    low: 'check it with a second thermometer, then the heater, unplugged before you reach in. Warm up by at most 1 °C a day.',
    high: 'check it with a second thermometer, then heater, pumps and room. More movement at the surface first: warm water holds less oxygen. Cool by at most 1 °C a day, never with ice in the tank.',
  },
  alkalinity: {
    low: 'retest, then raise it slowly if it is confirmed, by at most 1 dKH a day (/dose amount), and find out what the tank uses a day (/dose use).',
    high: 'retest, cut or stop what adds it, limewater included, and let the tank use it up. Never acid into the tank.',
  },
  magnesium: {
    low: 'retest, then raise it slowly if it is confirmed. With little magnesium, calcium and alkalinity are hard to hold.',
    high: 'retest, stop dosing it, and let water changes bring it down.',
  },
  calcium: {
    low: 'retest, then raise it slowly if it is confirmed, well apart from the alkalinity part.',
    high: 'retest, stop dosing it, and let growth use it up.',
  },
  ph: {
    low: 'look at the hour first (it is lowest before the lights come on), then air the room and move the surface more. Do not chase it with chemicals.',
    high: 'calibrate the probe, then look for limewater or soda ash going in too fast. Do not chase it with chemicals.',
  },
  nitrate: {
    low: 'retest, and feed a little more before dosing any.',
    high: 'retest, find what brings it in, and let water changes bring it down slowly (/waterchange goal).',
  },
  phosphate: {
    low: 'retest, and feed a little more before dosing any.',
    high: 'retest, find what brings it in, and let it come down slowly: a sudden fall harms more than the number.',
  },
  nitrite: {
    low: 'nothing to do.',
    high: 'test ammonia too. In sea water nitrite itself harms far less than ammonia does, but it means the filter has not caught up, and it makes nitrate kits read too high.',
  },
  ammonia: {
    low: 'nothing to do.',
    high: 'retest with a fresh sample, and act at once if it is confirmed: a running reef shows none.',
  },
};

const other: Advice = {
  low: 'retest, then raise it slowly if it is confirmed.',
  high: 'retest, find what brings it in, and let it come down slowly.',
};

/** The step about one reading that is not fine. */
export function stepFor(judged: Judged, units: OwnUnits): string {
  const { parameter: id, value, verdict, range } = judged;
  const { label, resolution } = loggable(id);
  const named = `${label} ${printed(id, value, units)}`;
  if (verdict === 'urgent') return id === 'temperature' ? temperatureStep(named, value) : ammoniaStep(named);
  if (verdict === 'doubtful') return doubt(judged, units);
  const side = verdict === 'low' ? 'low' : 'high';
  const bound = side === 'low' ? range[0] : range[1];
  if (id === 'salinity') return salinityStep(side, range);
  if ((id === 'nitrate' || id === 'phosphate') && side === 'low' && value < resolution) {
    return `${named} on a kit means below its limit, not none. Retest, and feed a little more before dosing any.`;
  }
  const place = side === 'low' ? 'below' : 'above';
  return `${named} is ${place} ${printed(id, bound, units)}: ${(advice[id] ?? other)[side]}`;
}

function doubt({ parameter: id, value, at35 }: Judged, units: OwnUnits): string {
  const { label } = loggable(id);
  if (id === 'salinity')
    return `Measure salinity again with an instrument checked against a 35 ppt standard: ${printed(id, value)} is hard to believe, and everything else hangs on it.`;
  const scaled = at35 === undefined ? '' : `; at salinity 35 it would be ${printed(id, at35, units)}`;
  return `Retest ${label} with a fresh sample and, if you can, another kit: ${printed(id, value, units)} is more likely a test error${scaled}. Do not dose anything to balance it.`;
}

function salinityStep(side: 'low' | 'high', [low, high]: readonly [number, number]): string {
  const way = side === 'low' ? 'raise' : 'lower';
  const aim = Math.min(high, Math.max(low, 35));
  const spilt =
    side === 'low'
      ? ' Fresh water that came in by mistake (a top-off that ran on) only has to evaporate again: keep the top-off off and add no salt for that.'
      : '';
  return `Check the salinity instrument, then ${way} slowly towards ${fixed(aim, 1)}, at most 1 ppt (0.001) a day, before any other correction: it moves calcium and magnesium with it.${spilt}`;
}

/** The emergency cards have the order, and how fast it may go back. */
function temperatureStep(named: string, tempC: number): string {
  const [what, why] =
    tempC > BEARABLE_C[1] ? ['overheating', 'heater off at the wall'] : ['cold water', 'heater looked at'];
  return `${named}: check it with a second thermometer now. If it is confirmed: ${why}, surface moved strongly, and /urgent what:${what} for the rest.`;
}

/** Common practice; no medicine and no dose of a conditioner: its own label says that. */
function ammoniaStep(named: string): string {
  return `${named}: test again now with a fresh sample. If it is confirmed: stop feeding, move the surface strongly, find and take out anything dead, and change a quarter to a half of the water today with new water of the same salinity and temperature. Test every day until it reads none.`;
}
