import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { DeskSettings, Server } from '../server.ts';

/** All settings, and what the bot lacks in this channel and in those they name. */
export function settingsAnswer(server: Server, done: string): Answer {
  const settings = server.settings();
  const checked = channelsOf(settings, server.channelId).map(({ label, id }) => {
    const lacking = server.lacks(id);
    return { fact: channelFact(label, id, lacking), complete: lacking.length === 0 };
  });
  const short = checked.filter(({ complete }) => !complete).length;
  const state = short === 0 ? 'I have every permission I need.' : `I lack permissions in ${places(short)}.`;
  return answer({
    headline: `${done} ${state}`,
    facts: [...unitFacts(settings), ...roleFact(settings), ...checked.map(({ fact }) => fact)],
    read: wordsOf(settings),
    steps: short === 0 ? [] : cure,
    next: short === 0 ? [] : [action(say('desk.lookAgain'), 'desk show', {})],
  });
}

const cure = [
  'Open Edit Channel, then Permissions, of each incomplete channel; of a thread or post, of its channel.',
  'Add my role there and allow the permissions named.',
  'A channel that is gone lacks everything: take it out with /desk clear or /desk public remove.',
];

function places(count: number): string {
  return count === 1 ? 'one channel' : `${count} channels`;
}

function wordsOf({ publicChannelIds, reminderChannelId }: DeskSettings): readonly string[] {
  return [
    publicChannelIds.length === 0
      ? 'answers are public in every channel, but for those about a tank of the asker'
      : 'answers are public in the channels listed, and elsewhere only the asker sees them',
    ...(reminderChannelId === undefined ? ['no channel for reminders: each member names one or none'] : []),
  ];
}

function unitFacts({ units }: DeskSettings): readonly Fact[] {
  return [
    { label: 'volume without a unit', value: units.volume ?? 'I ask' },
    { label: 'alkalinity without a unit', value: units.alkalinity ?? 'I ask' },
    { label: 'temperature without a unit', value: units.temperature ?? 'I ask' },
  ];
}

function roleFact({ helperRoleId }: DeskSettings): readonly Fact[] {
  if (helperRoleId === undefined) return [{ label: 'helpers', value: 'no role' }];
  return [{ label: 'helpers', value: 'those with the role', roleId: helperRoleId }];
}

interface Named {
  readonly label: string;
  readonly id: string;
}

function channelsOf({ reminderChannelId, publicChannelIds }: DeskSettings, hereId: string): readonly Named[] {
  const reminders =
    reminderChannelId === undefined ? [] : [{ label: 'reminders go to', id: reminderChannelId }];
  const open = publicChannelIds.map((id) => ({ label: 'public answers in', id }));
  return [{ label: 'this channel', id: hereId }, ...reminders, ...open];
}

function channelFact(label: string, channelId: string, lacking: readonly string[]): Fact {
  if (lacking.length === 0) return { label, value: 'I may do all I need', verdict: 'complete', channelId };
  return { label, value: `I lack ${lacking.join(', ')}`, verdict: 'incomplete', channelId };
}
