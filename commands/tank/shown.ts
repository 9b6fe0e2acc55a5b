import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { idOption, textOption } from '../options.ts';
import { timeFact } from '../remind/times.ts';
import type { Showing } from '../shown.ts';
import { knownZone } from '../zone.ts';
import { keepOf } from './asked-tank.ts';
import { detailFacts, PRACTICE_TARGETS, targetReason, waterFacts } from './facts.ts';
import { glassFacts } from './glass.ts';
import { waterWords } from './print.ts';
import { coralFacts, readingTable } from './shown-parts.ts';
import { say } from '../../core/wording/say.ts';

export const shownCommand = defineCommand({
  path: ['tank', 'shown'],
  summary: 'The tank that someone shows you, while you help them',
  example: '/tank shown by:100000000000000002',
  private: true,
  options: z.strictObject({
    by: idOption('member', 'Whose; left out, I list all').optional(),
    tank: textOption('Its name, if they show several').optional(),
  }),
  run: ({ by, tank: name }, context): Answer => {
    const keep = keepOf(context);
    const all = keep.shownToMe();
    const zone = knownZone(context) ?? 'UTC';
    if (by === undefined) return listed(all, zone);
    const theirs = all.filter(({ ownerId }) => ownerId === by);
    const found = theirs.length === 0 ? undefined : keep.shownTank(chosen(theirs, name).tankId);
    if (found === undefined) return notShown();
    const { tank, glass, latest, corals, ownerId, untilMs } = found;
    return answer({
      headline: `${tank.name}: ${waterWords(tank)}.`,
      read: ['shown to you alone, to look at: you can change nothing', targetReason(tank)],
      facts: [
        { label: 'whose', value: 'your help is asked by', personId: ownerId },
        timeFact('you see it until', untilMs, zone),
        ...waterFacts(tank),
        ...glassFacts(glass),
        ...detailFacts(tank, context.nowMs),
        { label: 'how the water is known', value: tank.volumeBasis },
        ...coralFacts(corals, glass),
      ],
      table: readingTable(tank, latest, context.nowMs),
      cautions: [
        PRACTICE_TARGETS,
        'What you read here is theirs: keep it out of public channels unless they say otherwise.',
      ],
      sources: ['practice'],
    });
  },
});

/** The one they show, or the one of that name among several. @throws Problem with the names to choose from. */
function chosen(theirs: readonly Showing[], name: string | undefined): Showing {
  const [only, another] = theirs;
  if (only !== undefined && another === undefined && name === undefined) return only;
  const found = name === undefined ? undefined : theirs.find((one) => clean(one.tankName) === clean(name));
  if (found !== undefined) return found;
  const message = name === undefined ? say('tank.whichOfTheirs') : say('tank.showNone', { name });
  throw new Problem(message, { field: 'tank', given: name, choices: theirs.map(({ tankName }) => tankName) });
}

function notShown(): Answer {
  return answer({
    headline: 'They show you no tank now.',
    steps: ['Ask them to type /tank show-to and your name: it lasts 24 hours, and they can take it back.'],
    sources: ['practice'],
  });
}

function listed(all: readonly Showing[], zone: string): Answer {
  if (all.length === 0) return { ...notShown(), headline: 'Nobody shows you a tank now.' };
  return answer({
    headline:
      all.length === 1 ? 'One tank is shown to you now.' : `${all.length} tanks are shown to you now.`,
    facts: all.map(({ tankName, ownerId, untilMs }) => {
      const { value, ...rest } = timeFact(tankName, untilMs, zone);
      return { ...rest, value: `until ${value}`, personId: ownerId };
    }),
    next: all
      .slice(0, 5)
      .map(({ tankName, ownerId }) =>
        action(say('tank.lookAt', { tankName }), 'tank shown', { by: ownerId, tank: tankName }),
      ),
    sources: ['practice'],
  });
}
