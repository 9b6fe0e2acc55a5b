import { answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { growthLine, sizeLine, uptakeLine, widthText, yearText } from '../../coral/about-lines.ts';
import { fullName, tellingName } from '../../coral/asked-kind.ts';
import { growthCommand } from '../../coral/growth.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { lengthIn } from './lengths.ts';
import { oneCoral, onlyEntry } from './named.ts';

const GROWS = [
  'how (?:fast|quick(?:ly)?|slow(?:ly)?) .{0,60}grow',
  'grow(?:s|th)? (?:rate|speed|fast|slow)',
  'growth',
  'how (?:big|wide|large) (?:do|does|will|can|is|would)',
  'how many heads',
  'outgrow',
] as const;

/** "how big does a toadstool get", "2 head torch, how many heads in a year": growth, from a size where one is said. */
export const growsIntent: Intent = (heard, context) => {
  if (!says(heard, ...GROWS)) return undefined;
  const named = oneCoral(heard);
  if (named === undefined) return undefined;
  const heads = /(?<![\d.])(\d{1,3})[ -]?heads?(?:ed)?\b/.exec(heard.text)?.[1];
  const size = heads === undefined ? lengthIn(heard)?.text : `${heads} heads`;
  const entry = onlyEntry(named);
  if (size !== undefined || entry === undefined) {
    return call(growthCommand, { coral: named.name, size }, context);
  }
  return answer({
    headline: `${entry.names.common[0]}: ${yearText(entry.growth)}, ${widthText(entry.size)}.`,
    read: [`${named.name} as ${fullName(entry)}`],
    facts: [sizeLine(entry), growthLine(entry), uptakeLine(entry)],
    cautions: [
      'Ranges, not promises: light, food and room decide, and new pieces often stand still for weeks.',
    ],
    next: [action('From the size it has now', 'coral growth', { coral: tellingName(entry) }, ['size'])],
  });
};
