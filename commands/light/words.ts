import { usualLight } from '../../core/corals/group-light.ts';
import type { CoralGroup } from '../../core/corals/kind.ts';
import { inPpfdRange, lightBand, par, shownPpfd } from '../../core/light/band.ts';
import { inRange } from '../../core/problem.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { Fact } from '../answer.ts';

/** A number an option held, and what to say about how it was read. */
export interface Read {
  readonly value: number;
  readonly notes: readonly string[];
}

/** A light reading as it is printed, so that what is judged is what is shown. */
export function readPar(text: string, field: string): Read {
  const { value, notes } = readQuantity('light', text, { field });
  return { value: shownPpfd(inPpfdRange(field, value)), notes };
}

/** Hours to the minute, as they are printed. */
export function readHours(text: string, field: string): Read {
  const { value, notes } = readQuantity('hours', text, { field });
  return { value: Math.round(value * 60) / 60, notes };
}

/** A lamp's setting, 1 to 100 %, to the tenth, as it is printed. */
export function readSetting(text: string, field: string): Read {
  const { value, notes } = readQuantity('share', text, { field });
  return { value: Math.round(inRange(field, value, 1, 100, '%') * 10) / 10, notes };
}

/** "8 h", "6 h 40 min", "45 min". */
export function duration(hours: number): string {
  const minutes = Math.round(hours * 60);
  const whole = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (rest === 0) return `${whole} h`;
  return whole === 0 ? `${rest} min` : `${whole} h ${rest} min`;
}

/** "5.8 mol/m² a day"; below 1 to two places, below 0.1 to two figures. */
export function daily(totalMol: number): string {
  const total = totalMol < 0.1 ? significant(totalMol, 2) : fixed(totalMol, totalMol < 1 ? 2 : 1);
  return `${total} mol/m² a day`;
}

export function bandFact(label: string, ppfd: number): Fact {
  return { label, value: par(ppfd), verdict: lightBand(ppfd) };
}

/** What is usual in a group, as a fact of an answer about something else. */
export function usualFact(group: CoralGroup): Fact {
  const { lowPpfd, highPpfd, startPpfd } = usualLight(group);
  return {
    label: 'usual',
    value: `${lowPpfd} to ${highPpfd} PAR for ${group} corals, beginning near ${startPpfd} (project rule)`,
  };
}

export const TOO_MUCH_SIGNS =
  'Signs of too much: paling or bleaching, polyps small and tight or shut, tissue shrinking back on the lit side.';
export const TOO_MUCH_ACTION =
  'If you see them, go back to the last setting that was fine the same day, or shade it; then wait two weeks.';
export const TOO_MUCH_IS_COMMONER =
  'Too much light is the commoner harm, and it is quick; too little shows slowly, as stretched stalks or browning.';
export const LOOK_NOT_ONLY_LIGHT =
  'Light is not the only cause of a pale or shut coral: check salinity, alkalinity and temperature too.';
