import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { coralById } from '../../core/corals/coral-list.ts';
import { findCorals } from '../../core/corals/find.ts';
import { say } from '../../core/wording/say.ts';
import type { Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import type { Placing } from '../placed.ts';

/** At most so many are offered as choices. */
const MOST_CHOICES = 8;

export function placedOption() {
  return textOption('Which of your corals: its number, your name for it, or what it is', {
    suggest: 'placed',
  });
}

/** "3: Torch coral": what an option takes and a member recognises. */
export function numbered(placing: Placing): string {
  return `${placing.id}: ${nameOf(placing)}`;
}

/** The member's own name for it, else the first common name of its kind. */
export function nameOf({ label, coralId }: Placing): string {
  return label ?? coralById(coralId)?.names.common[0] ?? coralId;
}

/**
 * The coral of a number ("3", "3: Torch coral"), a label or a kind, in that tank.
 *
 * @throws Problem where there is none or more than one; the same for what is not theirs as for what does not exist.
 */
export function askedPlaced(keep: Keep, tank: Tank, given: string): Placing {
  const all = keep.corals(tank.id);
  const fitting = matching(all, given);
  const [only] = fitting;
  if (only !== undefined && fitting.length === 1) return only;
  const offered = fitting.length > 0 ? fitting : all;
  throw new Problem(
    fitting.length > 0 ? say('coral.whichOfThem') : say('coral.notInTank', { tank: tank.name }),
    {
      field: 'coral',
      given,
      hint: all.length === 0 ? say('coral.hintPlaceFirst') : say('coral.hintList'),
      choices: offered.slice(0, MOST_CHOICES).map(numbered),
    },
  );
}

function matching(all: readonly Placing[], given: string): readonly Placing[] {
  const id = /^#?(\d{1,15})(?::.*)?$/s.exec(given.trim())?.[1];
  if (id !== undefined) return all.filter((one) => one.id === Number(id));
  const wanted = clean(given);
  const exact = all.filter((one) => clean(nameOf(one)) === wanted);
  if (exact.length > 0 || wanted === '') return exact;
  const found = findCorals(given);
  const kinds = found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
  const ofKind = all.filter(({ coralId }) => kinds.some((entry) => entry.id === coralId));
  return ofKind.length > 0 ? ofKind : all.filter((one) => clean(nameOf(one)).includes(wanted));
}
