import { MOST_INCHES, SURELY_FT } from '../../../core/language/side-units.ts';
import { answer, type Answer, type NextAction } from '../../answer.ts';

/** With the unit that was said, or that another length of the message or the size itself tells. */
export function boxWithUnit(box: string, lengths: readonly string[]): string | undefined {
  if (unitOf(box) !== undefined) return box;
  const [said] = lengths.flatMap((text) => unitOf(text) ?? []);
  if (said !== undefined) return `${box} ${said.startsWith('in') || said === 'ft' ? 'in' : 'cm'}`;
  const sides = box.split(' x ').map(Number);
  if (sides.every((side) => side <= SURELY_FT)) return `${box} ft`;
  return sides.some((side) => side > MOST_INCHES) ? `${box} cm` : undefined;
}

/** What stands behind the last number of a quantity; undefined for none. */
export function unitOf(text: string): string | undefined {
  const last = text.split(' ').at(-1) ?? '';
  return Number.isNaN(Number(last)) ? last : undefined;
}

/** Asked where nothing tells it; a button goes on with the whole size. */
export function whichUnit(box: string, goOn: (size: string, label: string) => NextAction): Answer {
  return answer({
    headline: 'Are the sides in cm or in inches?',
    read: [`a box of ${box}`],
    next: [goOn(`${box} cm`, 'In cm'), goOn(`${box} in`, 'In inches')],
  });
}
