import { z } from 'zod';
import { origins } from '../../core/corals/scene.ts';
import { readSpot } from '../../core/corals/spot.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { MOST_NAME_LETTERS } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedKind } from './asked-kind.ts';
import { nameOf } from './asked-placed.ts';
import { askedSince } from './asked-since.ts';
import { askedWidth, widthOption } from './asked-width.ts';
import { placementAnswer } from './placement-answer.ts';
import { boxOf, sceneOf } from './scene-of.ts';
import { tankInput, tankOption } from './tank-input.ts';

export const addCoralCommand = defineCommand({
  path: ['coral', 'add'],
  summary: 'Place a coral in your tank and check the spot: light, sting, sand or rock, growth',
  example: '/coral add coral:torch at:left, back, middle rock size:3 heads',
  private: true,
  options: z.strictObject({
    coral: textOption('What it is, by any name', { suggest: 'coral', max: 80 }),
    at: textOption('Where: "left, back, low", or cm from left, front and bottom: 12 x 30 x 20 cm'),
    size: widthOption(),
    origin: z
      .enum(origins)
      .describe('Where it grew: it sets how bright it begins; unknown where not said')
      .optional(),
    since: textOption('The day it came: today, 3 days ago, or 2025-01-03').optional(),
    label: textOption('Your own name for it', { max: MOST_NAME_LETTERS }).optional(),
    tank: tankOption(),
  }),
  run: (input, context): Answer => {
    const { nowMs } = context;
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const { entry, read } = askedKind(input.coral);
    const width = askedWidth(input.size, entry);
    const { spot, rough } = readSpot(input.at, boxOf(keep, tank), 'at');
    const kept = keep.addCoral(tank.id, {
      coralId: entry.id,
      label: input.label,
      spot,
      rough,
      diameterCm: width.diameterCm,
      origin: input.origin ?? 'unknown',
      since: input.since === undefined ? undefined : askedSince(input.since, nowMs),
    });
    if (kept === undefined) throw new Error('the tank went while a coral was added');
    return placementAnswer(sceneOf(keep, tank, nowMs), kept.id, {
      headline: say('coral.isCoral', { name: nameOf(kept), id: String(kept.id), tank: tank.name }),
      read: [
        ...read,
        width.read,
        ...(kept.since === undefined
          ? ['when it came is not said: its light is judged as that of a piece long here']
          : [`here since ${kept.since}`]),
      ],
      tankInput: tankInput(keep, tank),
    });
  },
});
