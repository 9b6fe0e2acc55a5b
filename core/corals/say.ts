import { counted, fixed } from '../quantity/format.ts';

/** Centimetres for people: whole from 20 up, else to a tenth. */
export function cm(value: number): string {
  return `${amount(value)} cm`;
}

/** "5 to 15 cm", or "5 cm" where both ends are the same. */
export function cmRange(lowCm: number, highCm: number): string {
  const [low, high] = [amount(lowCm), amount(highCm)];
  return low === high ? `${low} cm` : `${low} to ${high} cm`;
}

/** "3 to 7 months", "less than a month": what follows "in". */
export function monthRange(soonest: number, latest: number | undefined): string {
  const low = Math.max(0, Math.round(soonest));
  if (latest === undefined)
    return `${low === 0 ? 'less than a month' : counted(low, 'month')} at the soonest`;
  const high = Math.round(latest);
  if (high === 0) return 'less than a month';
  if (low === 0) return `at most ${counted(high, 'month')}`;
  return low === high ? `about ${counted(low, 'month')}` : `${low} to ${counted(high, 'month')}`;
}

/** A distance still missing, never rounded down to less than is needed. */
export function missingCm(value: number): string {
  return cm(upCm(value));
}

/** The length as it is printed, rounded up: whole from 20 cm up, else to a tenth. 9.899 -> 9.9, 26.1 -> 27. */
export function upCm(value: number): number {
  return value < 20 ? Math.ceil(value * 10 - 1e-6) / 10 : Math.ceil(value - 1e-6);
}

/** The same rounded down: 9.899 -> 9.8, 26.9 -> 26. */
export function downCm(value: number): number {
  return value < 20 ? Math.floor(value * 10 + 1e-6) / 10 : Math.floor(value + 1e-6);
}

function amount(value: number): string {
  return fixed(value, value < 20 ? 1 : 0);
}

/** As many of the names as fit so many letters, one at the least: "Zoas, Palys and 3 more". */
export function fittingOf(names: readonly string[], letters: number): string {
  const counts = names.map((_, at) => names.length - at);
  return fewOf(names, counts.find((most) => fewOf(names, most).length <= letters) ?? 1);
}

/** The first few of many names: "Zoas, Palys, Toadstool leather, Duncan and 21 more". */
export function fewOf(names: readonly string[], most = 4): string {
  const more = names.length - most;
  return more <= 0 ? names.join(', ') : `${names.slice(0, most).join(', ')} and ${more} more`;
}
