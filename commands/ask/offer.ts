import { GRAVE } from '../../core/care/hurt/question.ts';
import { isDangerKind } from '../../core/language/kind-groups.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { personAction } from '../urgent/hurt.ts';
import { MOST_OFFERED } from './decide.ts';
import { heardOf } from './heard.ts';
import { rowOf } from './kinds.ts';
import { unclearDangers } from './unclear-danger.ts';

/** A button that takes the last message as one kind of question. */
export function asKind(kind: Kind): NextAction | undefined {
  const row = rowOf(kind);
  return row === undefined ? undefined : action(say(row.label), 'ask', { as: kind });
}

/** The button on every answer to plain words that shows the next likeliest; what was refused before, the case holds. */
export function notThat(kinds: readonly Kind[]): NextAction {
  return action(say('ask.notThat'), 'ask', { not: kinds.join(' ') });
}

interface AnyCall {
  readonly command: string;
  readonly input: Readonly<Record<string, string | undefined>>;
}

/** Whether a button takes the last message anew: it works only where that is remembered. */
export function takesAnew({ command, input }: AnyCall): boolean {
  return command === 'ask' && input['question'] === undefined;
}

/** The kinds whose rows are offered, the likeliest first. */
export function offered(frames: readonly Frame[]): readonly Kind[] {
  return frames
    .map(({ kind }) => kind)
    .filter((kind) => rowOf(kind) !== undefined && kind !== 'told')
    .slice(0, MOST_OFFERED);
}

/** What is right at once, whichever danger it is. */
const AT_ONCE = [
  `A person: ${GRAVE}: the emergency number now.`,
  'Water, sparks or smoke near mains: breaker off from a dry place before you touch anything.',
  'Fish gasp or lie down: move the surface hard now, air stone in, and add nothing.',
] as const;

/** What a message may want, the likeliest first; where a person or the tank may be in danger, that is asked first. */
export function offers(frames: readonly Frame[]): Answer {
  const [first] = frames;
  const heard = heardOf(first?.slots ?? {});
  const isDanger = isDangerKind(first?.kind);
  return answer({
    tone: 'question',
    headline: isDanger ? say('ask.isItDanger') : say('ask.whichDoYouMean'),
    read: heard === '' ? [] : [heard],
    steps: isDanger ? AT_ONCE : [],
    dangers: unclearDangers(offered(frames)),
    next: offered(frames).flatMap((kind) => asKind(kind) ?? []),
  });
}

/** Nothing near: one line, and the subjects. */
export function farFromAll(frames: readonly Frame[]): Answer {
  const heard = heardOf(frames[0]?.slots ?? {});
  return answer({
    headline: say('ask.notUnderstood'),
    tone: 'question',
    read: heard === '' ? [] : [heard],
    next: [
      personAction(),
      action(say('urgent.goingWrong'), 'urgent', {}),
      action(say('triage.looksWrong'), 'triage', {}),
      action(say('help.whatICanDo'), 'help', {}),
    ],
  });
}
