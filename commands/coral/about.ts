import { z } from 'zod';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { fittingHeadline } from '../fitting.ts';
import { textOption } from '../options.ts';
import { aboutLines } from './about-lines.ts';
import { askedKind, fullName, tellingName } from './asked-kind.ts';
import { hazardCautions } from './hazard-lines.ts';
import { namingRead } from './naming.ts';
import { shortFirst } from './short-first.ts';

export const aboutCoralCommand = defineCommand({
  path: ['coral', 'about'],
  summary: 'What a coral needs and does: light, flow, spot, sting, room, food, how hard it is',
  example: '/coral about coral:torch',
  options: z.strictObject({ coral: textOption('A coral by any name', { suggest: 'coral', max: 80 }) }),
  run: (input): Answer => {
    const { entry, read } = askedKind(input.coral);
    const said = headline(entry);
    return answer({
      headline: said,
      read: [...read.filter((line) => !said.startsWith(line)), ...namingRead(entry)],
      facts: shortFirst(aboutLines(entry)),
      dangers: hazardCautions([entry]),
      cautions: [...hardCautions(entry), CARE_VALUES],
      next: nextOf(entry),
    });
  },
});

function headline(entry: CoralEntry): string {
  const { names, light, ground, hardiness, photosynthetic } = entry;
  const bright = photosynthetic
    ? `${light.lowPpfd} to ${light.highPpfd} PAR beginning near ${light.startPpfd}`
    : 'food rather than light';
  const needs = `${hardiness.value} to keep, ${bright}, ${flowWords(entry)} flow, on ${ground.value}.`;
  return fittingHeadline(`${fullName(entry)}: ${needs}`, `${names.common[0]}: ${needs}`);
}

function hardCautions({ hardiness }: CoralEntry): readonly string[] {
  return hardiness.value === 'demanding'
    ? ['Not a coral to begin with: many are lost even in tanks that have run for years (common practice).']
    : [];
}

const CARE_VALUES =
  'The numbers are where it is usually kept, no measured limits. Too much light is the commoner harm: begin low.';

function nextOf(entry: CoralEntry): readonly NextAction[] {
  const coral = tellingName(entry);
  return [
    action(say('coral.lightForIt'), 'light range', { coral }),
    action(say('coral.besideAnother'), 'coral compare', { a: coral }, ['b']),
    action(say('coral.howItGrows'), 'coral growth', { coral }, ['size']),
    action(say('coral.placeInMyTank'), 'coral add', { coral }, ['at', 'size']),
  ];
}
