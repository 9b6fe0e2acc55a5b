import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Level } from '../../../core/language/slots.ts';
import { troubleTold } from '../../../core/language/trouble.ts';
import { readLogged } from '../../../core/log/value.ts';
import { Problem } from '../../../core/problem.ts';
import type { Value } from '../../../core/water/assess.ts';
import { moveRemark } from '../../../core/water/move.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { ageSteps, PH_BY_AIR } from '../../checkup/beside-numbers.ts';
import { judgedAnswer } from '../../checkup/judged.ts';
import type { OwnContext } from '../../command.ts';
import { rangeNamesOf, rangesOf } from '../../log/ranges.ts';
import { kindWords } from '../../tank/print.ts';
import { notUsed } from '../../urgent/not-used.ts';
import { isYoungSaid } from '../../../core/language/age-said.ts';
import { levelsWritten } from './levels-of.ts';
import { movedTo } from './moves-said.ts';

/** A bare number from here on may be a reading nobody understood; own choice, since "one" and "two" count things. */
const LEAST_READING = 3;

/**
 * Every level a message says of the tank, judged by the aims of the tank in use; undefined where none was said. Nothing is
 * called fine while a number or a trouble of the message was not used.
 *
 * @throws Problem where the only reading can mean two things.
 */
export function judgedFrame(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots, reading, rest } = frame;
  const { keep } = context;
  const tank = keep?.tankInUse();
  const levels = levelsWritten(slots, reading.scanned.text);
  const { values: latest, left } = readAll(levels, tank?.units);
  if (latest.length === 0) return undefined;
  const moved = latest.flatMap(({ level, value }) => movedTo(frame, levels, level, value, context) ?? []);
  const bothNow = moved.flatMap(({ before, isBothNow }) => (isBothNow ? [before] : []));
  const values = [...readAll(bothNow, tank?.units).values, ...latest];
  const texts = new Set([...values.map(({ text }) => text), ...moved.map(({ before }) => before.text)]);
  const { amounts = [], shares = [], light = [], counts = [], strength, container, otherTemperature } = slots;
  const counted = counts.filter((count) => count >= LEAST_READING).map(String);
  const others = [...levels, ...rest].map(({ text }) => text);
  const unused = [
    ...new Set([
      ...others,
      ...amounts,
      ...shares,
      ...light,
      ...counted,
      strength,
      container,
      otherTemperature,
    ]),
  ].filter((text): text is string => text !== undefined && !texts.has(text));
  const aims =
    tank === undefined ? {} : { rangeOf: rangesOf(tank), rangeName: rangeNamesOf(tank), units: tank.units };
  const told = {
    isYoung: met(reading.scanned, 'deeds.setsUp', 'events.cycles') || isYoungSaid(reading.scanned),
    isForCorals: slots.corals !== undefined || met(reading.scanned, 'corals.anyCoral', 'deeds.buys'),
  };
  const wantsPh = slots.levels?.some(
    ({ of, part }) => of === 'ph' && (part === 'wanted' || part === 'change'),
  );
  const judged = judgedAnswer({
    ...aims,
    values,
    read: [
      ...(tank === undefined ? [] : [`${tank.name}: ${kindWords[tank.kind]}, its own targets first`]),
      ...new Set(values.flatMap(({ notes }) => notes)),
      ...moved
        .filter(({ isBothNow }) => !isBothNow)
        .map(({ before: { of, text } }) => `${parameter(of).label} ${text} before`),
    ],
    unused,
    moves: moved.flatMap(({ move }) => moveRemark(move) ?? []),
    trouble: troubleTold(reading.scanned),
    steps: [...(wantsPh === true ? [PH_BY_AIR] : []), ...ageSteps(values, told)],
  });
  const nowhere = unused.filter((text) => !left.some((line) => line.includes(text)));
  return { ...judged, unused: [...left, ...nowhere] };
}

interface Read extends Value {
  readonly level: Level;
  readonly text: string;
  readonly notes: readonly string[];
}

/** Of each parameter the last that is told of now, else the last it was; what cannot be read is named. */
function readAll(
  levels: readonly Level[],
  units: Parameters<typeof readLogged>[3],
): { readonly values: readonly Read[]; readonly left: readonly string[] } {
  const left: string[] = [];
  const ids = [...new Set(levels.map(({ of }) => of))];
  const found = ids.flatMap((id) => lastOf(levels, id) ?? []);
  const values = found.flatMap((level): Read[] => {
    const { of, text } = level;
    try {
      return [{ level, parameter: of, text, ...readLogged(of, text, of, units) }];
    } catch (error) {
      if (!(error instanceof Problem) || (found.length === 1 && error.choices.length > 0)) throw error;
      left.push(notUsed(of, text, error));
      return [];
    }
  });
  return { values, left };
}

function lastOf(levels: readonly Level[], id: ParameterId): Level | undefined {
  const of = (part: Level['part']) => levels.findLast((level) => level.of === id && level.part === part);
  return of('now') ?? of('was');
}
