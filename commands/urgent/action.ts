import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import type { NextAction } from '../answer.ts';
import { action } from '../calls.ts';

/** A button that opens an emergency. */
export function urgentAction(id: UrgentId): NextAction {
  return action(urgentCard(id).label, 'urgent', { what: id });
}
