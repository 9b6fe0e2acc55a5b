import { ComponentType } from 'discord.js';
import type { APIComponentInContainer, APIMessageTopLevelComponent, Message } from 'discord.js';
import { readLook } from '../asked/held-id.ts';

type Components = readonly APIMessageTopLevelComponent[];

const mostComponents = 40;
const mostCharacters = 4000;

/**
 * What a message shows without the buttons that do something: those that only show more stay. Undefined where it shows a
 * picture or a file, which an edit would have to send again.
 */
export function spent({ components, attachments }: Message): Components | undefined {
  if (attachments.size > 0) return undefined;
  return components.map((each) => withoutActions(withoutIds(each.toJSON())));
}

/** The words on a button of a message. */
export function labelOf({ components }: Message, customId: string): string | undefined {
  const all = everyNode(components.map((each) => each.toJSON()));
  const label = all.find((each) => each['custom_id'] === customId)?.['label'];
  return typeof label === 'string' ? label : undefined;
}

/** Whether Discord takes so much in one message. */
export function fits(components: Components): boolean {
  const all = everyNode(components);
  const letters = all.map(({ content }) => (typeof content === 'string' ? content.length : 0));
  return all.length <= mostComponents && letters.reduce((sum, each) => sum + each, 0) <= mostCharacters;
}

function withoutActions(component: APIMessageTopLevelComponent): APIMessageTopLevelComponent {
  if (component.type !== ComponentType.Container) return component;
  return {
    ...component,
    components: component.components.map(looksAlone).filter((each) => each !== undefined),
  };
}

function looksAlone(child: APIComponentInContainer): APIComponentInContainer | undefined {
  if (child.type !== ComponentType.ActionRow) return child;
  const components = child.components.filter((each) => 'custom_id' in each && readLook(each.custom_id));
  return components.length === 0 ? undefined : { ...child, components };
}

/** Discord numbers the parts of a message anew. */
function withoutIds(component: APIMessageTopLevelComponent): APIMessageTopLevelComponent {
  const text = JSON.stringify(component, (key, value: unknown) => (key === 'id' ? undefined : value));
  return JSON.parse(text) as APIMessageTopLevelComponent;
}

type Node = Readonly<Record<string, unknown>>;

function everyNode(nodes: unknown): readonly Node[] {
  if (!Array.isArray(nodes)) return [];
  return (nodes as readonly Node[]).flatMap((node) => [node, ...everyNode(node['components'])]);
}
