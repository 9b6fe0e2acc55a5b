import { Problem } from '../../core/problem.ts';
import { fixed, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { insideOf } from '../../core/tank/glass.ts';
import { capacityL, type Size } from '../../core/tank/shape.ts';
import { readSize } from '../../core/tank/size.ts';
import type { VolumeInput } from './options.ts';
import { say } from '../../core/wording/say.ts';

/** The glass of a tank, its inside where that is known. */
export interface AskedSize {
  readonly size: Size;
  /** False where nobody said whether it was measured inside: then it is the most it can be. */
  readonly inside: boolean;
  /** "120 x 50 x 50 cm inside". */
  readonly words: string;
  readonly read: readonly string[];
  readonly working: readonly string[];
}

/** The size of the options, or undefined where none is given. @throws Problem where glass or shape do not fit it. */
export function askedSize(input: VolumeInput): AskedSize | undefined {
  if (input.size === undefined) {
    const orphan = (['shape', 'measured', 'glass'] as const).find((field) => input[field] !== undefined);
    if (orphan === undefined) return undefined;
    throw new Problem(say('tank.saysNothingWithoutSize', { orphan }), {
      field: 'size',
      hint: say('tank.giveSizeTooSuch'),
    });
  }
  const shape = input.shape ?? 'box';
  const given = readSize(input.size, shape, 'size');
  const full = capacityL(given);
  const where = input.measured ?? (input.glass === undefined ? undefined : 'outside');
  const words = `${input.size.trim()}${shape === 'box' ? '' : `, ${shape}`}${where === undefined ? '' : ` ${where}`}`;
  const label = `${shape === 'box' ? 'box tank' : 'tank'} ${words}`;
  if (where !== 'outside') {
    const how =
      where === undefined ? ['whether inside or outside the glass is not said: taken as inside'] : [];
    const unused = input.glass === undefined ? [] : ['an inside size needs no thickness of glass'];
    const working = [`${input.size.trim()}: ${volume(full)} to the rim`];
    return { size: given, inside: where === 'inside', words, read: [label, ...how, ...unused], working };
  }
  const glassCm = askedGlass(input);
  const size = insideOf(given, glassCm);
  const pane = `${fixed(glassCm * 10, 1)} mm`;
  return {
    size,
    inside: true,
    words: `${words} in ${pane} glass`,
    read: [`${label} the glass, panes of ${pane}`],
    working: [
      `Outside ${volume(full)}; less ${pane} of glass on each side and at the bottom, ${volume(capacityL(size))} to the rim inside`,
    ],
  };
}

function askedGlass({ glass, size }: VolumeInput): number {
  if (glass === undefined) {
    throw new Problem(say('tank.howThickGlassOutside'), {
      field: 'glass',
      given: size,
      hint: say('tank.thicknessOnePaneSuch'),
    });
  }
  const { value } = readQuantity('length', glass, { field: 'glass', fallback: 'mm' });
  if (value >= 0.1 && value <= 10) return value;
  throw new Problem(say('tank.paneAquarium1100'), {
    field: 'glass',
    given: glass,
    limit: say('tank.limitPane'),
  });
}
