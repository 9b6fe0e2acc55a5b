import type { Reader } from '../../core/language/reading.ts';
import { answer } from '../../commands/answer.ts';
import type { Answer } from '../../commands/answer.ts';
import type { Talk } from '../../commands/ask/talk.ts';
import { withoutKeep } from '../../commands/command.ts';
import type { Asking, Command, Context } from '../../commands/command.ts';
import { runFilled, withDefaults } from '../../commands/defaults.ts';
import { forAsker, wordsOf } from '../../commands/for-asker.ts';
import type { Keep } from '../../commands/keep.ts';
import { firstPage } from '../../commands/help.ts';
import { commandNamed } from '../../commands/named.ts';
import { watchedKeep } from '../../commands/watched-keep.ts';
import { Problem } from '../../core/problem.ts';
import { localeInForce } from '../../core/wording/in-locale.ts';
import { logFailure } from '../log.ts';
import { withNotices } from '../notices.ts';
import { erasingKeep } from '../erasing-keep.ts';
import type { Talks } from '../talks.ts';
import { tooFast, type Turn } from '../turns.ts';
import { say } from '../../core/wording/say.ts';
import { typedInput } from './asked/call.ts';
import type { Call } from './asked/call.ts';
import { seenOn, type Pressed } from './asked/pressed.ts';
import type { HeldDesk } from './held/holder.ts';
import type { Drawn } from './message/drawn.ts';
import { failureAnswer, problemAnswer } from './message/problem.ts';
import { watchedServer } from './asked/place.ts';
import type { PlaceHere, SettingsDesk } from './asked/place.ts';
import { talkOfCall } from './talking.ts';

/** What answering needs; everything comes from the composition root. */
export interface Desk extends SettingsDesk, Talks, HeldDesk {
  readonly commands: readonly Command[];
  readonly ask: (text: string, asking: Asking) => Answer;
  /** Reads plain words. */
  readonly reader: Reader;
  readonly nowMs: () => number;
  /** What the person of this id keeps. */
  readonly keepFor: (personId: string) => Keep;
  /** Whether a member may have an answer now. */
  readonly turnOf: (personId: string) => Turn;
  /** Draws SVG as PNG. */
  readonly toPng: (svg: string) => Promise<Uint8Array>;
}

export interface Outcome {
  readonly answer: Drawn;
  /** Only the asker sees it. */
  readonly hidden: boolean;
  /** Something that is kept of the asker, or of the server, was changed. */
  readonly isChanged?: boolean;
  /** Nothing of it is held, so that all of it is shown at once: after an erasure. */
  readonly leavesNoTrace?: boolean;
}

/** Who asks, and where others read it; no place is a direct message. */
export interface Asker {
  readonly personId: string;
  readonly place: PlaceHere | undefined;
  /** Id of the interaction, under which its talk is found again. */
  readonly askedId?: string;
  /** The message a button of ours stood on. */
  readonly pressed?: Pressed | undefined;
}

/** A command with the values its options have. */
export interface Asked extends Asker {
  readonly command: string;
  readonly values: Readonly<Record<string, unknown>>;
  /** The same as text, for buttons that ask again with another value; a file has no text. */
  readonly call: Call | undefined;
}

/** Runs a command. It never throws: a problem and a failure of ours are outcomes too, and hidden ones. */
export function run(desk: Desk, asked: Asked): Outcome {
  const { personId, place, askedId, pressed, command: name, values, call } = asked;
  if (desk.turnOf(personId) !== 'now') return { answer: tooFast(), hidden: true };
  return attempt(desk, call, () => {
    const command = commandOf(desk, name);
    const { keep, isErased } = keepHere(desk, personId);
    const seen = seenOn(pressed, personId);
    const isForAll = seen === 'by all' && place !== undefined && !command.private && !command.sharing;
    let isChanged = false;
    const onWrite = (): void => void (isChanged = true);
    const watched = { keep: watchedKeep(keep, onWrite) };
    const asking: Asking = {
      ...now(desk, place, personId, onWrite),
      ...(isForAll ? {} : watched),
    };
    const filled = withDefaults(command, values, asking);
    const isAlone = filled.hidden || seen === 'alone';
    const isOwn = isAlone || place?.isPublic() !== true;
    const talk = talkOfCall(desk, { personId, place, isOwn }, call ?? { command: name, input: {} }, pressed);
    const answered = runFilled(command, filled, { ...asking, talk });
    const given = forAsker(answered, wordsOf(values), isOwn ? asking : withoutKeep(asking));
    if (isChanged && asking.locale !== undefined) keep.noteLocale(asking.locale);
    if (askedId !== undefined) talk.askedAt(askedId);
    const noted = isForAll ? given : withNotices(given, keep);
    const own = isAlone || noted.file !== undefined || noted !== given;
    return {
      answer: noted,
      hidden: own || place?.isPublic() === false,
      isChanged,
      leavesNoTrace: isErased(),
    };
  });
}

function now(
  desk: Desk,
  place: PlaceHere | undefined,
  personId: string | undefined,
  onWrite = (): void => {},
): Context {
  const server = place?.server && watchedServer(place.server, onWrite);
  const locale = localeInForce();
  return {
    nowMs: desk.nowMs(),
    reader: desk.reader,
    ...(locale === undefined ? {} : { locale }),
    ...(personId === undefined ? {} : { units: desk.keepFor(personId).units() }),
    ...(place === undefined ? {} : { isShared: true }),
    ...(server === undefined ? {} : { server }),
  };
}

/** What a member keeps; erasing it ends their talks too. */
function keepHere(desk: Desk, personId: string): { readonly keep: Keep; readonly isErased: () => boolean } {
  let isErased = false;
  const keep = erasingKeep(desk.keepFor(personId), () => {
    isErased = true;
    desk.forgetTalks(personId);
  });
  return { keep, isErased: () => isErased };
}

/** Runs a call whose options are text, as a button or a form holds them. */
export function runText(desk: Desk, asker: Asker, call: Call): Outcome {
  const command = commandNamed(call.command, desk.commands);
  const values = command === undefined ? {} : typedInput(command, call.input);
  return run(desk, { ...asker, command: call.command, values, call });
}

/** A message that is answered. */
interface Written {
  readonly talk: Talk;
  /** Who wrote it: of them only the units they chose are looked up where others read the answer. */
  readonly writerId: string;
}

/**
 * Answers a question in plain words; without words, says how to ask. `personId` only where nobody but that person reads
 * the answer: with it the answer may tell of their tank.
 */
export function runWords(
  desk: Desk,
  text: string,
  { personId, writerId = personId, place, talk }: Partial<Asker & Written>,
): Outcome {
  return attempt(desk, undefined, () => {
    if (place?.isPublic() === false) return { answer: elsewhere(), hidden: false };
    if (text === '')
      return { answer: firstPage(desk.commands.filter(({ managers }) => !managers)), hidden: false };
    const here = { ...now(desk, place, writerId), ...(talk === undefined ? {} : { talk }) };
    const asked = (asking: Asking): Answer => forAsker(desk.ask(text, asking), text, asking);
    if (personId === undefined) return { answer: asked(here), hidden: false };
    const { keep, isErased } = keepHere(desk, personId);
    const answered = withNotices(asked({ ...here, keep }), keep);
    return { answer: answered, hidden: false, leavesNoTrace: isErased() };
  });
}

/** Answers about someone else's words: with nobody's tank, and outside of any talk. */
export function runApart(
  desk: Desk,
  personId: string,
  place: PlaceHere | undefined,
  work: (context: Context) => Answer,
): Outcome {
  if (desk.turnOf(personId) !== 'now') return { answer: tooFast(), hidden: true };
  return attempt(desk, undefined, () => ({ answer: work(now(desk, place, personId)), hidden: false }));
}

/** A reply to a message cannot be private. */
function elsewhere(): Answer {
  return answer({ headline: say('discord.forYourEyes') });
}

/** @throws Problem when there is none of this name, as in an old button. */
export function commandOf(desk: Desk, name: string): Command {
  const command = commandNamed(name, desk.commands);
  if (command !== undefined) return command;
  const hint = say('discord.hintCommandsNow');
  throw new Problem(say('discord.commandGone'), { field: 'command', given: name, hint });
}

/** What `work` answers; or its problem, or its failure. */
function attempt(desk: Desk, call: Call | undefined, work: () => Outcome): Outcome {
  try {
    return work();
  } catch (error) {
    return failed(desk, error, call);
  }
}

/** A problem as an answer; any other error is logged and becomes its id. For the asker alone. */
export function failed(desk: Desk, error: unknown, call?: Call): Outcome {
  if (!(error instanceof Problem)) {
    return { answer: failureAnswer(logFailure(desk.log, error, 'an answer failed')), hidden: true };
  }
  const command = call && commandNamed(call.command, desk.commands);
  return { answer: problemAnswer(error, call, command), hidden: true };
}
