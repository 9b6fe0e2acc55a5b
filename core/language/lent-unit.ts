import { withoutUndefined, type Slots } from './slots.ts';

const BARE = /^[\d.,]+$/;
const UNIT = /[a-z][a-z .]*$/i;

/**
 * Slots with bare volumes in the unit of the tank's: of "its 30 gal" and later "i swap 10 out" the ten are gallons. What has
 * a unit keeps it.
 */
export function withLentUnit(slots: Slots): Slots {
  const unit = UNIT.exec(slots.volume ?? '')?.[0];
  if (unit === undefined) return slots;
  const lent = (text: string | undefined): string | undefined =>
    text !== undefined && BARE.test(text) ? `${text} ${unit}` : text;
  const { changed, container, batches } = slots;
  return withoutUndefined({
    ...slots,
    changed: lent(changed),
    container: lent(container),
    batches: batches?.map(lent),
  });
}
