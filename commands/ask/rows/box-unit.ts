import type { Frame } from '../../../core/language/frame.ts';
import { sidesText } from '../../../core/language/side-units.ts';
import { forms } from '../../../core/tank/size.ts';
import { say } from '../../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../../answer.ts';

/** The box of a message with its unit: said, or told by another length, by words of the message or by its size. */
export function boxWithUnit({
  slots: { box, lengths = [] },
  reading: { scanned, said },
}: Frame): string | undefined {
  if (box === undefined || !/\d$/.test(box)) return box;
  const all = lengths.flatMap((text) => said.find((one) => one.text === text) ?? []);
  const { length } = forms.box;
  const { text, unit } = sidesText(scanned.text, all.slice(0, length), all.slice(length));
  return unit === undefined ? undefined : text;
}

/** Asked where nothing tells it; a button goes on with the whole size. */
export function whichUnit(box: string, goOn: (size: string, label: string) => NextAction): Answer {
  return answer({
    headline: say('ask.cmOrInches'),
    tone: 'question',
    read: [`a box of ${box}`],
    next: [goOn(`${box} cm`, say('ask.inCm')), goOn(`${box} in`, say('ask.inInches'))],
  });
}
