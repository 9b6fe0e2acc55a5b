import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Tank } from '../keep.ts';
import { idOption, textOption } from '../options.ts';
import { timeFact } from '../remind/times.ts';
import { MOST_HELPERS, type Viewer } from '../shown.ts';
import { knownZone } from '../zone.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { say } from '../../core/wording/say.ts';

export const showToCommand = defineCommand({
  path: ['tank', 'show-to'],
  summary: 'Let a helper see your tank for a day; can be taken back',
  example: '/tank show-to who:100000000000000002',
  private: true,
  options: z.strictObject({
    who: idOption('member', 'Who; left out, I list who sees it now').optional(),
    stop: z.enum(['yes']).describe('yes takes it back at once').optional(),
    tank: textOption('Which of your tanks', { suggest: 'tank' }).optional(),
  }),
  run: ({ who, stop, tank: name }, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, name);
    const zone = knownZone(context, tank) ?? 'UTC';
    if (stop === 'yes') {
      const before = keep.viewers(tank.id).filter(({ helperId }) => who === undefined || helperId === who);
      for (const { helperId } of before) keep.hideFrom(tank.id, helperId);
      return listed(tank, stoppedWords(tank, before, who), keep.viewers(tank.id), zone);
    }
    if (who === undefined)
      return listed(tank, nowWords(tank, keep.viewers(tank.id)), keep.viewers(tank.id), zone);
    const shown = keep.showTo(tank.id, who);
    if (shown === undefined) throw new Problem(say('tank.tankNoLongerKept'), { field: 'tank', given: name });
    return granted(tank, keep.viewers(tank.id), zone);
  },
});

function granted(tank: Tank, viewers: readonly Viewer[], zone: string): Answer {
  return {
    ...listed(tank, `They may see ${tank.name} for 24 hours, and then no more.`, viewers, zone),
    read: [
      'what they see: water, glass, habits, targets, the last readings and the corals',
      'what they do not see: notes, reminders, your other tanks. They can change nothing',
    ],
    steps: ['I do not tell them: write to them, so that they look with /tank shown.'],
  };
}

function listed(tank: Tank, headline: string, viewers: readonly Viewer[], zone: string): Answer {
  return answer({
    headline,
    facts: viewers.map((viewer) => viewerFact(viewer, zone)),
    next: viewers.slice(0, MOST_HELPERS).map(({ helperId }, index) =>
      action(
        viewers.length === 1 ? say('remind.takeBack') : say('tank.takeBackFromNo', { value: index + 1 }),
        'tank show-to',
        {
          who: helperId,
          stop: 'yes',
          tank: tank.name,
        },
      ),
    ),
    sources: ['practice'],
  });
}

function viewerFact({ helperId, untilMs }: Viewer, zone: string): Fact {
  const { value, ...rest } = timeFact('may see it', untilMs, zone);
  return { ...rest, value: `until ${value}`, personId: helperId };
}

function nowWords({ name }: Tank, viewers: readonly Viewer[]): string {
  if (viewers.length === 0) return `Nobody but you sees ${name}.`;
  return `${viewers.length === 1 ? 'One helper sees' : `${viewers.length} helpers see`} ${name} now.`;
}

function stoppedWords({ name }: Tank, taken: readonly Viewer[], who: string | undefined): string {
  if (taken.length > 0) return `Taken back: they see ${name} no more.`;
  return who === undefined ? `Nobody but you sees ${name}.` : `They did not see ${name}, and do not now.`;
}
