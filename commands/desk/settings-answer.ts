import type { SentenceKey } from '../../core/wording/language.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { DeskSettings, Server } from '../server.ts';
import { unitFacts } from '../unit-facts.ts';

/** All settings, and what the bot lacks in this channel and in those they name. */
export function settingsAnswer(server: Server, done: SentenceKey): Answer {
  const settings = server.settings();
  const checked = channelsOf(settings, server.channelId).map(({ label, id }) => {
    const lacking = server.lacks(id);
    return { fact: channelFact(label, id, lacking), complete: lacking.length === 0 };
  });
  const short = checked.filter(({ complete }) => !complete).length;
  const state = short === 0 ? say('desk.haveAll') : say('desk.lackIn', { count: short });
  return answer({
    headline: `${say(done)} ${state}`,
    facts: [...unitsHere(settings), ...roleFact(settings), ...checked.map(({ fact }) => fact)],
    read: wordsOf(settings),
    steps: short === 0 ? [] : [say('desk.openPermissions'), say('desk.addMyRole'), say('desk.channelGone')],
    next: short === 0 ? [] : [action(say('desk.lookAgain'), 'desk show', {})],
  });
}

function wordsOf({ publicChannelIds, reminderChannelId }: DeskSettings): readonly string[] {
  return [
    publicChannelIds.length === 0 ? say('desk.publicEverywhere') : say('desk.publicWhereListed'),
    ...(reminderChannelId === undefined ? [say('desk.noReminderChannel')] : []),
  ];
}

function unitsHere({ units }: DeskSettings): readonly Fact[] {
  const facts = unitFacts(units);
  return facts.length > 0 ? facts : [{ label: say('desk.unitsHere'), value: say('desk.noUnits') }];
}

function roleFact({ helperRoleId }: DeskSettings): readonly Fact[] {
  if (helperRoleId === undefined) return [{ label: say('desk.helpers'), value: say('desk.noRole') }];
  return [{ label: say('desk.helpers'), value: say('desk.withTheRole'), roleId: helperRoleId }];
}

interface Named {
  readonly label: string;
  readonly id: string;
}

function channelsOf({ reminderChannelId, publicChannelIds }: DeskSettings, hereId: string): readonly Named[] {
  const reminders =
    reminderChannelId === undefined ? [] : [{ label: say('desk.remindersGoTo'), id: reminderChannelId }];
  const open = publicChannelIds.map((id) => ({ label: say('desk.publicIn'), id }));
  return [{ label: say('desk.thisChannel'), id: hereId }, ...reminders, ...open];
}

function channelFact(label: string, channelId: string, lacking: readonly string[]): Fact {
  if (lacking.length === 0)
    return { label, value: say('desk.mayDoAll'), verdict: say('desk.complete'), channelId };
  return {
    label,
    value: say('desk.lack', { permissions: lacking.join(', ') }),
    verdict: say('desk.incomplete'),
    channelId,
  };
}
