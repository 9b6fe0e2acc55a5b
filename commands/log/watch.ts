import { z } from 'zod';
import { readLogged } from '../../core/log/value.ts';
import { Problem } from '../../core/problem.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedMeasured } from './asked-measured.ts';
import { borderWords, watchedWords } from './watched.ts';
import { say } from '../../core/wording/say.ts';

const ONLY_LOGGED = 'I only see what is logged: I measure nothing, and tell you when you log a reading.';

export const watchCommand = defineCommand({
  path: ['log', 'watch'],
  summary: 'Tell me of a reading I log: over or under a border; without options it lists them',
  example: '/log watch of:nitrate over:20',
  private: true,
  options: z.strictObject({
    of: textOption('What to watch: nitrate, alkalinity, temperature, ...', {
      suggest: 'parameter',
    }).optional(),
    over: textOption('Tell me above this, e.g. 20').optional(),
    under: textOption('Tell me below this, e.g. 7 dKH').optional(),
    stop: z.enum(['yes']).describe('yes stops watching it').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    if (input.of === undefined) {
      if (input.over === undefined && input.under === undefined && input.stop === undefined)
        return listed(keep, tank);
      throw which(keep, tank);
    }
    const id = askedMeasured(input.of);
    if (input.stop === 'yes') return stopped(keep, tank, id);
    return set(keep, tank, id, input);
  },
});

interface Borders {
  readonly over?: string | undefined;
  readonly under?: string | undefined;
}

function set(keep: Keep, tank: Tank, id: ParameterId, { over, under }: Borders): Answer {
  const { label } = parameter(id);
  if (over === undefined && under === undefined) {
    throw new Problem(say('log.fromWhichOnShall', { label }), {
      field: 'over',
      hint: say('log.sayOver20Under'),
    });
  }
  const borders = [over, under].map((text, at) =>
    text === undefined ? undefined : readLogged(id, text, at === 0 ? 'over' : 'under', tank.units),
  );
  const [high, low] = borders.map((border) => border?.value);
  if (high !== undefined && low !== undefined && low >= high) {
    throw new Problem(say('log.upperBorderMustBe'), { field: 'under', given: under });
  }
  const watch = { parameter: id, over: high, under: low };
  keep.setWatch(tank.id, watch);
  const last = keep.latest(tank.id).filter((reading) => reading.parameter === id);
  const beyond = watchedWords(keep, tank, last);
  return answer({
    headline: `Watched for ${tank.name}: ${label} ${borderWords(watch, tank)}.`,
    read: borders.flatMap((border) => border?.notes ?? []),
    facts: beyond.map((value) => ({ label: 'Your last reading is there already', value })),
    steps: [ONLY_LOGGED],
    next: [
      action(say('ask.stopWatching'), 'log watch', { of: label, stop: 'yes', tank: tank.name }),
      action(say('log.allWatched'), 'log watch', { tank: tank.name }),
    ],
    sources: ['practice'],
  });
}

function stopped(keep: Keep, tank: Tank, id: ParameterId): Answer {
  const { label } = parameter(id);
  const before = keep.watches(tank.id).find((each) => each.parameter === id);
  const isGone = keep.removeWatch(tank.id, id);
  return answer({
    headline: isGone
      ? `I no longer watch ${label} for ${tank.name}.`
      : `I was not watching ${label} for ${tank.name}.`,
    read: before === undefined ? [] : [`it was ${borderWords(before, tank)}`],
    next: [action(say('log.allWatched'), 'log watch', { tank: tank.name })],
  });
}

function listed(keep: Keep, tank: Tank): Answer {
  const watches = keep.watches(tank.id);
  return answer({
    headline:
      watches.length === 0
        ? `Nothing is watched for ${tank.name}.`
        : `Watched for ${tank.name}: ${watches.map(({ parameter: id }) => parameter(id).label).join(', ')}.`,
    facts: watches.map((watch) => ({
      label: parameter(watch.parameter).label,
      value: borderWords(watch, tank),
    })),
    steps: [ONLY_LOGGED, ...(watches.length === 0 ? ['Set one: /log watch of:nitrate over:20.'] : [])],
    next: watches.map(({ parameter: id }) =>
      action(say('log.stop', { label: parameter(id).label }), 'log watch', {
        of: parameter(id).label,
        stop: 'yes',
        tank: tank.name,
      }),
    ),
  });
}

function which(keep: Keep, tank: Tank): Problem {
  return new Problem(say('log.whichReading'), {
    field: 'of',
    choices: keep.watches(tank.id).map(({ parameter: id }) => parameter(id).label),
    hint: say('log.nameNitrate'),
  });
}
