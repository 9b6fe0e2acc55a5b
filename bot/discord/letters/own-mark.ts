import type { NextAction } from '../../../commands/answer.ts';
import { callId } from '../asked/call.ts';

/** Whether one of these messages, as Discord's JSON has them, shows the button of this action. */
export function hasOwn(messages: unknown, mark: NextAction): boolean {
  const id = callId(mark);
  return id !== undefined && shows(messages, id);
}

function shows(node: unknown, id: string): boolean {
  if (Array.isArray(node)) return node.some((each) => shows(each, id));
  if (typeof node !== 'object' || node === null) return false;
  const { custom_id: own, components, component, accessory } = node as Readonly<Record<string, unknown>>;
  return own === id || [components, component, accessory].some((each) => shows(each, id));
}
