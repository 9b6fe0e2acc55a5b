import { symptomCard, symptomIds, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { groupIds, groups, type GroupId } from '../../core/care/symptoms/group.ts';
import { clean } from '../../core/quantity/clean.ts';

/** What a member says they see: a card or a group by its name, or plain words that are still to be read. */
export type Seen =
  | { readonly kind: 'one'; readonly id: SymptomId }
  | { readonly kind: 'group'; readonly group: GroupId }
  | { readonly kind: 'words' };

/** A word of the menus, the words shown, or plain words. */
export function readSeen(text: string): Seen {
  const wanted = clean(text);
  const group = groupIds.find((id) => id === wanted || clean(groups[id]) === wanted);
  if (group !== undefined) return { kind: 'group', group };
  const exact = symptomIds.find((id) => id === wanted || clean(symptomCard(id).label) === wanted);
  return exact === undefined ? { kind: 'words' } : { kind: 'one', id: exact };
}

export function symptomsOf(group: GroupId): readonly SymptomId[] {
  return symptomIds.filter((id) => symptomCard(id).group === group);
}
