import { symptomCard, symptomIds, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { symptomsIn } from '../../core/care/symptoms/find.ts';
import { groupIds, groups, type GroupId } from '../../core/care/symptoms/group.ts';
import { clean } from '../../core/quantity/clean.ts';

/** What a member says they see: one thing, several it can be, a group, or nothing known. */
export type Seen =
  | { readonly kind: 'one'; readonly id: SymptomId }
  | { readonly kind: 'several'; readonly ids: readonly SymptomId[] }
  | { readonly kind: 'group'; readonly group: GroupId }
  | { readonly kind: 'none' };

/** A word of the menus, the words shown, or plain words. */
export function readSeen(text: string): Seen {
  const wanted = clean(text);
  const group = groupIds.find((id) => id === wanted || clean(groups[id]) === wanted);
  if (group !== undefined) return { kind: 'group', group };
  const exact = symptomIds.find((id) => id === wanted || clean(symptomCard(id).label) === wanted);
  const found = exact === undefined ? symptomsIn(wanted) : [exact];
  const [only] = found;
  if (only === undefined) return { kind: 'none' };
  return found.length === 1 ? { kind: 'one', id: only } : { kind: 'several', ids: found };
}

export function symptomsOf(group: GroupId): readonly SymptomId[] {
  return symptomIds.filter((id) => symptomCard(id).group === group);
}
