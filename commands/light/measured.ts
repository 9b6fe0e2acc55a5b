import { z } from 'zod';
import { par } from '../../core/light/band.ts';
import { Problem } from '../../core/problem.ts';
import { readSpot } from '../../core/corals/spot.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { guessedCautions, spotSaid, spotShort } from '../coral/spot-said.ts';
import { boxOf, sceneOf } from '../coral/scene-of.ts';
import { tankInput, tankOption } from '../coral/tank-input.ts';
import type { Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import type { NewLightPoint } from '../placed.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { pointsAnswer } from './points-answer.ts';
import { removedAnswer } from './point-removed.ts';
import { changedLight } from './verdict-changes.ts';
import { readPar } from './words.ts';
import { say } from '../../core/wording/say.ts';

export const measuredCommand = defineCommand({
  path: ['light', 'measured'],
  summary: 'Enter PAR readings by spot, see them all, or take one out; says what they change',
  example: '/light measured at:left, back, low par:120',
  private: true,
  options: z.strictObject({
    at: textOption('Where: "left, back, low" or 12 x 30 x 20 cm; several spots with ; between').optional(),
    par: textOption('PAR read there; several in the same order: 120; 180', { max: 100 }).optional(),
    remove: textOption('The number of a reading to take out', { max: 20 }).optional(),
    tank: tankOption(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const again = tankInput(keep, tank);
    if (input.remove !== undefined) return removedAnswer(keep, tank, input.remove, context.nowMs);
    if (input.at === undefined && input.par === undefined) {
      return pointsAnswer(keep, tank, again, context.nowMs);
    }
    return stored(keep, tank, askedPoints(keep, tank, input, context.nowMs), context.nowMs);
  },
});

/** Spots and readings in the same order. @throws Problem where they do not match. */
function askedPoints(
  keep: Keep,
  tank: Tank,
  { at, par: read }: { readonly at?: string | undefined; readonly par?: string | undefined },
  atMs: number,
): readonly NewLightPoint[] {
  if (at === undefined)
    throw new Problem(say('light.whereWasRead'), { field: 'at', hint: say('light.suchAsLeftBack') });
  if (read === undefined)
    throw new Problem(say('light.howMuchParWas'), { field: 'par', hint: say('light.suchAs120') });
  const spots = parts(at, /;/);
  const values = parts(read, /[;,]|\s+(?=\d)/);
  if (spots.length !== values.length) {
    throw new Problem(say('light.spotsReadingsINeed', { length: spots.length, length2: values.length }), {
      field: 'par',
      given: read,
      hint: say('light.severalAtOnceAt'),
    });
  }
  const box = boxOf(keep, tank);
  return spots.map((text, index) => ({
    spot: readSpot(text, box, 'at').spot,
    ppfd: readPar(values[index] ?? '', 'par').value,
    atMs,
  }));
}

function parts(text: string, between: RegExp): readonly string[] {
  return text
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function stored(keep: Keep, tank: Tank, points: readonly NewLightPoint[], nowMs: number): Answer {
  const before = sceneOf(keep, tank, nowMs);
  const kept = keep.addLightPoints(tank.id, points);
  const after = sceneOf(keep, tank, nowMs);
  const changes = changedLight(before, after);
  const again = tankInput(keep, tank);
  const [first] = kept;
  const what =
    first !== undefined && kept.length === 1
      ? `${par(first.ppfd)} is kept as reading ${first.id} of ${tank.name}`
      : `${kept.length} readings are kept for ${tank.name}`;
  return answer({
    headline: `${what}: ${changes.facts.length === 0 ? "no coral's light verdict changes" : `the light verdict changes for ${changes.facts.length === 1 ? 'one coral' : `${changes.facts.length} corals`}`}.`,
    read: kept.map(
      ({ id, spot, ppfd }) => `reading ${id}: ${par(ppfd)}, ${spotSaid({ spot, rough: false }, after.box)}`,
    ),
    facts: changes.facts,
    isList: true,
    steps: [
      'A reading holds for its lamp setting: measure again when the lamp, its height or its dimming changes.',
    ],
    working: changes.working,
    cautions: guessedCautions(after),
    sources: ['practice'],
    next: [
      action(say('light.allReadings'), 'light measured', again),
      ...(after.corals.length === 0 ? [] : [action(say('ask.checkMyCorals'), 'coral check', again)]),
      ...(first !== undefined && kept.length === 1
        ? [
            action(say('light.takeOutAgain', { spotShort: spotShort(first.spot) }), 'light measured', {
              remove: String(first.id),
              ...again,
            }),
          ]
        : []),
    ],
  });
}
