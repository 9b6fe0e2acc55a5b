import { par, parRange } from '../../core/light/band.ts';
import type { Box, Scene } from '../../core/corals/scene.ts';
import { readSpot } from '../../core/corals/spot.ts';
import type { Level, Wanted } from '../../core/corals/suits.ts';
import { Problem } from '../../core/problem.ts';
import type { CoralGroup } from '../../core/corals/kind.ts';
import type { FlowBand } from '../../core/corals/entry.ts';
import { lightAt, READING_RADIUS_CM } from '../../core/corals/par-field.ts';
import { say } from '../../core/wording/say.ts';
import type { OwnContext } from '../command.ts';
import type { Tank } from '../keep.ts';
import { readPar } from '../light/words.ts';
import { askedTank } from '../tank/asked-tank.ts';
import { daysSince, sceneOf } from './scene-of.ts';
import { standingIn } from './corals-in.ts';
import { glassRead, saidGlass } from './said-glass.ts';
import { guessedCautions, spotSaid } from './spot-said.ts';

export interface WantedInput {
  readonly level?: Level | undefined;
  readonly at?: string | undefined;
  readonly par?: string | undefined;
  readonly flow?: FlowBand | undefined;
  readonly ground?: 'rock' | 'sand' | undefined;
  readonly kind?: CoralGroup | undefined;
  /** What stands there already, in the member's words. */
  readonly beside?: string | undefined;
  /** The water of a tank that is not kept here. */
  readonly volume?: string | undefined;
  readonly tank?: string | undefined;
}

/** What is asked for, the words for the headline, and what was read. */
export interface AskedWanted {
  readonly wanted: Wanted;
  readonly conditions: readonly string[];
  readonly read: readonly string[];
  readonly cautions: readonly string[];
}

/** @throws Problem where a spot is named without a tank, or a tank that is not theirs. */
export function askedWanted(input: WantedInput, context: OwnContext): AskedWanted {
  const { at, flow, ground, kind } = input;
  const tank = ownTank(input, context);
  const scene =
    tank === undefined || context.keep === undefined ? undefined : sceneOf(context.keep, tank, context.nowMs);
  const isYoung = input.level === undefined && isYoungTank(tank, context.nowMs);
  const level = isYoung ? 'first year' : input.level;
  const reading = input.par === undefined ? undefined : readPar(input.par, 'par');
  if (at !== undefined && scene === undefined) {
    throw new Problem(say('coral.noTankForSpot'), {
      field: 'at',
      given: at,
      hint: say('coral.hintTankForSpot'),
    });
  }
  const place =
    scene !== undefined && at !== undefined
      ? spotPlace(scene, at, reading?.value)
      : reading === undefined
        ? undefined
        : readingPlace(reading.value);
  const said = scene === undefined ? saidGlass(input.volume) : undefined;
  const onSand = place !== undefined && at !== undefined && place.spot.zCm === 0 ? 'sand' : undefined;
  return {
    wanted: {
      level,
      flow,
      ground: ground ?? onSand,
      group: kind,
      box: scene?.box ?? said,
      boxGuessed: said !== undefined,
      neighbours: [...standingIn(input.beside), ...(scene?.corals ?? [])],
      place,
    },
    conditions: [
      ...(isYoung ? ['a young tank'] : level === undefined ? [] : [levelWords[level]]),
      ...(at === undefined || scene === undefined || place === undefined ? [] : [spotSaid(place, scene.box)]),
      ...(reading === undefined ? [] : [par(reading.value)]),
      ...(flow === undefined ? [] : [`${flow} flow`]),
      ...(ground === undefined ? [] : [`on ${ground}`]),
      ...(input.beside === undefined ? [] : [`beside ${input.beside}`]),
    ],
    read: [
      ...(isYoung ? [`your tank runs since ${tank?.startedOn}: judged like a first year of reefs`] : []),
      ...(scene === undefined ? untoldOf(input.beside, said) : tankRead(scene)),
      ...(reading?.notes ?? []),
      ...lightRead(scene, place, reading?.value),
    ],
    cautions: scene === undefined ? [] : guessedCautions(scene),
  };
}

const levelWords: Readonly<Record<Level, string>> = {
  'first year': 'first year of reefs',
  'some years': 'some years of reefs',
  'many years': 'many years of reefs',
};

/** The tank named, else the one in use; none is no fault. */
function ownTank({ tank }: WantedInput, { keep }: OwnContext): Tank | undefined {
  if (keep === undefined || (tank === undefined && keep.tankInUse() === undefined)) return undefined;
  return askedTank(keep, tank);
}

/** Before so many days only what a first year may keep is offered: project rule, half a year. */
const YOUNG_DAYS = 183;

function isYoungTank(tank: Tank | undefined, nowMs: number): boolean {
  return tank?.startedOn !== undefined && daysSince(tank.startedOn, nowMs) < YOUNG_DAYS;
}

/** A spot of the tank; a reading given now counts there before those that are kept. */
function spotPlace(scene: Scene, at: string, ppfd: number | undefined): NonNullable<Wanted['place']> {
  const { spot, rough } = readSpot(at, scene.box, 'at');
  if (ppfd === undefined) return { scene, spot, rough, untold: ['room'] };
  return {
    scene: { ...scene, light: [{ ...spot, id: 0, ppfd, atMs: 0 }] },
    spot,
    rough: false,
    untold: ['room'],
  };
}

/** Somewhere with that light; nothing else is known of it. */
function readingPlace(ppfd: number): NonNullable<Wanted['place']> {
  const spot = { xCm: 50, yCm: 50, zCm: 0 };
  const scene: Scene = {
    box: { lengthCm: 100, widthCm: 100, heightCm: 100 },
    boxGuessed: false,
    corals: [],
    light: [{ ...spot, id: 0, ppfd, atMs: 0 }],
  };
  return { scene, spot, rough: false, untold: ['ground', 'room'] };
}

function untoldOf(beside: string | undefined, said: Box | undefined): readonly string[] {
  if (said !== undefined) return [glassRead(said)];
  return beside === undefined
    ? ['no tank, so size and neighbours are not judged']
    : ['no tank, so size is not judged'];
}

function tankRead({ corals }: Scene): readonly string[] {
  return [
    corals.length === 0
      ? 'your tank has no corals here yet, so no neighbours are judged'
      : `judged beside the ${corals.length === 1 ? 'one coral' : `${corals.length} corals`} of your tank`,
  ];
}

function lightRead(
  scene: Scene | undefined,
  place: Wanted['place'],
  ppfd: number | undefined,
): readonly string[] {
  if (ppfd !== undefined) return [];
  if (scene === undefined || place === undefined) return ['no light given, so light is not judged'];
  const here = lightAt(scene.light, place.spot);
  return here === undefined
    ? [`no light reading within ${READING_RADIUS_CM} cm of the spot, so light is not judged`]
    : [`light there: ${parRange(here.lowPpfd, here.highPpfd)}`];
}
