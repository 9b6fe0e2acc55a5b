import { namedOnly, typedUnits, type TypedUnits } from '../core/language/typed-units.ts';
import { amountsIn } from '../core/quantity/amounts.ts';
import {
  american,
  firstChosen,
  metric,
  unitsOfLocale,
  type ChosenUnits,
} from '../core/quantity/chosen-units.ts';
import { toUnit } from '../core/quantity/format.ts';
import { inUnits } from '../core/quantity/in-units.ts';
import type { Answer } from './answer.ts';
import type { Asking } from './command.ts';
import type { Tank } from './keep.ts';
import { withTexts } from './sentences.ts';
import { unitsChosen } from './units-of.ts';

/**
 * An answer with its amounts in the asker's units: those that were typed, else those of the tank in use, their own, the
 * server's, those that what they typed of another kind lets guess, their country's. Formulas stay in the units they
 * are worked out in, and buttons run what they ran.
 */
export function inOwnUnits<Given extends Answer>(given: Given, typed: string, asking: Asking): Given {
  const units = unitsFor(given, typedUnits(typed), asking);
  return { ...withTexts(given, (line) => inUnits(line, units)), working: given.working };
}

function unitsFor(given: Answer, typed: TypedUnits, asking: Asking): ChosenUnits {
  const names = {
    volume:
      tankRead(given, asking.keep?.tankInUse()) ?? (restsOnLitres(given) ? 'L' : namedOnly(typed, 'volume')),
    length: namedOnly(typed, 'length'),
    temperature: degreesRead(given, typed) ?? namedOnly(typed, 'temperature'),
    alkalinity: namedOnly(typed, 'alkalinity'),
  } as const;
  const chosen = firstChosen(
    unitsChosen(asking),
    guessed(names, 'sure'),
    unitsOfLocale(asking.locale),
    guessed(names, 'perhaps'),
    metric,
  );
  const of = <K extends keyof ChosenUnits>(kind: K): ChosenUnits[K] => {
    const name = names[kind];
    if (name === 'several') return undefined;
    return name === 'none' ? chosen[kind] : (name as ChosenUnits[K]);
  };
  return {
    volume: of('volume'),
    length: of('length'),
    temperature: of('temperature'),
    alkalinity: of('alkalinity'),
  };
}

type Names = Readonly<Record<keyof ChosenUnits, string>>;

/** Who thinks in gallons thinks in inches; feet and inches alone are said in many countries. */
function guessed({ volume, length, temperature }: Names, how: 'sure' | 'perhaps'): ChosenUnits {
  if (volume === 'US gal' || temperature === '°F') return american;
  if ([volume, length, temperature].some((one) => one === 'L' || one === 'cm' || one === '°C')) return metric;
  return how === 'perhaps' && length === 'in' ? american : {};
}

/** Less is a jug or a bottle more often than a tank: project rule. */
const LEAST_TANK_L = 8;

/** The unit of the water that the answer rests on, from whatever message it came, but for that of the tank in use. */
function tankRead({ read }: Answer, tank: Tank | undefined): ChosenUnits['volume'] {
  const isKept = (volumeL: number): boolean =>
    tank !== undefined && Math.abs(volumeL - tank.netVolumeL) <= 0.005 * volumeL;
  const first = read
    .flatMap(amountsIn)
    .find(
      ({ unit, values, isPer }) =>
        unit.kind === 'volume' &&
        !isPer &&
        (values[0] ?? 0) * unit.factor >= LEAST_TANK_L &&
        !isKept((values[0] ?? 0) * unit.factor),
    );
  const symbol = first?.unit.symbol;
  return symbol === 'L' || symbol === 'US gal' || symbol === 'imp gal' ? symbol : undefined;
}

/** Where no volume is known amounts are told for 100 L, and each of them in litres. */
function restsOnLitres({ headline, read, facts }: Answer): boolean {
  return [headline, ...read, ...facts.map(({ value }) => value)].some((line) => /\bper \d+ L\b/.test(line));
}

/** Whether a temperature that was typed as a bare number was read in °C or in °F. */
function degreesRead({ headline, read, facts }: Answer, typed: TypedUnits): ChosenUnits['temperature'] {
  if (typed.named.temperature.size > 0) return undefined;
  const lines = [...read, headline, ...facts.map(({ value }) => value)];
  const degrees = lines
    .flatMap(amountsIn)
    .filter(({ unit }) => unit.symbol === '°C')
    .flatMap(({ values }) => values.slice(0, 1));
  const isTyped = (value: number, off: number): boolean =>
    typed.bare.some((one) => Math.abs(one - value) <= off);
  if (degrees.some((celsius) => isTyped(celsius, 0.01))) return '°C';
  const isIn = (celsius: number): boolean =>
    celsius > 10 && isTyped(toUnit('temperature', celsius, '°F'), 0.1);
  return degrees.some(isIn) ? '°F' : undefined;
}
