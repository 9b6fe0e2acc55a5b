import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import type { NextAction } from '../answer.ts';

/** A button that opens an emergency. */
export function urgentAction(id: UrgentId): NextAction {
  return { label: urgentCard(id).label, command: 'urgent', input: { what: id } };
}
