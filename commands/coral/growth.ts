import { z } from 'zod';
import { coralIn } from '../../core/corals/check.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { diameterAfter, headsAfter } from '../../core/corals/growth.ts';
import { cm } from '../../core/corals/say.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import { textOption } from '../options.ts';
import { growthLine, sizeLine, uptakeLine } from './about-lines.ts';
import { askedKind, tellingName } from './asked-kind.ts';
import { askedOwn } from './asked-own.ts';
import { askedWidth, widthOption } from './asked-width.ts';
import { growthTable, TOLD_MONTHS, widthWords } from './growth-table.ts';
import { neighbourFacts } from './neighbour-facts.ts';
import { sceneOf } from './scene-of.ts';

export const growthCommand = defineCommand({
  path: ['coral', 'growth'],
  summary: 'How wide a coral gets, and how many heads it has in 3, 6, 12 and 24 months, as ranges',
  example: '/coral growth coral:torch size:2 heads',
  options: z.strictObject({
    coral: textOption('A coral by any name, or one of yours by its number', { suggest: 'coral', max: 80 }),
    size: widthOption().optional(),
  }),
  run: (input): Answer => growthAnswer(kindAsked(input)),
  own: {
    when: (_, { hasTank }) => hasTank,
    run: (input, context): Answer => growthAnswer(ownAsked(input, context) ?? kindAsked(input)),
  },
});

function growthAnswer({ entry, name, diameterCm, read, beside }: Colony): Answer {
  const { basis } = diameterAfter(entry, diameterCm, 12);
  const heads = headsAfter(entry, diameterCm, 12);
  return answer({
    headline: `${name}, ${cm(diameterCm)} wide now: about ${widthWords(entry, diameterCm, 12)} in a year, if it thrives.`,
    read,
    table: growthTable(entry, diameterCm),
    facts: beside,
    working: [
      ...[growthLine(entry), sizeLine(entry), uptakeLine(entry)].map(
        ({ label, value }) => `${label}: ${value}`,
      ),
      `width rests on: ${basis}`,
      ...(heads === undefined ? [] : [`heads rest on: ${heads.basis}`]),
    ],
    cautions: [
      'Ranges, not promises: light, food, alkalinity and room decide, and new pieces often stand still for weeks (common practice).',
      ...(heads === undefined
        ? []
        : [
            'As many heads are told as have their place in the width; later they slow down as room runs out.',
          ]),
      ...trimCautions(entry, diameterCm),
    ],
    next: [
      action(say('coral.about', { coral: entry.names.common[0] }), 'coral about', {
        coral: tellingName(entry),
      }),
    ],
  });
}

/** Where it may outgrow its usual width within the months told. */
function trimCautions(entry: CoralEntry, diameterCm: number): readonly string[] {
  const { practicalMaxCm } = entry.size;
  const widest = Math.max(...TOLD_MONTHS.map((months) => diameterAfter(entry, diameterCm, months).high));
  return widest <= practicalMaxCm
    ? []
    : [
        `It does not stop at some ${cm(practicalMaxCm)}, its usual width in a tank: from there plan to trim it.`,
      ];
}

interface GrowthInput {
  readonly coral: string;
  readonly size?: string | undefined;
}

interface Colony {
  readonly entry: CoralEntry;
  readonly name: string;
  readonly diameterCm: number;
  readonly read: readonly string[];
  /** What stands next to it, for one of the asker's own. */
  readonly beside: readonly Fact[];
}

/** One of the asker's own, as it stands. */
function ownAsked(input: GrowthInput, context: OwnContext): Colony | undefined {
  const own = askedOwn(context, input.coral);
  if (own === undefined) return undefined;
  const { keep, tank, placing } = own;
  const scene = sceneOf(keep, tank, context.nowMs);
  const now = coralIn(scene, placing.id);
  const width = input.size === undefined ? undefined : askedWidth(input.size, now.entry);
  const coral = { ...now, diameterCm: width?.diameterCm ?? now.diameterCm };
  return {
    entry: coral.entry,
    name: coral.label,
    diameterCm: coral.diameterCm,
    read: [`coral ${placing.id} of ${tank.name}`, ...(width === undefined ? [] : [width.read])],
    beside: neighbourFacts(scene, coral),
  };
}

/** A kind, with the size it is said to have. */
function kindAsked(input: GrowthInput): Colony {
  const { entry, read } = askedKind(input.coral);
  if (input.size === undefined) {
    throw new Problem(say('coral.howBig'), {
      field: 'size',
      hint: say('coral.hintHowBig'),
      choices: ['1 head', '2 heads', '3 cm', '5 cm', '10 cm'],
    });
  }
  const width = askedWidth(input.size, entry);
  return {
    entry,
    name: entry.names.common[0],
    diameterCm: width.diameterCm,
    read: [...read, width.read],
    beside: [],
  };
}
