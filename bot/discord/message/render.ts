import { ButtonStyle, ComponentType, MessageFlags } from 'discord.js';
import type {
  APIActionRowComponent,
  APIButtonComponentWithCustomId,
  APIComponentInContainer,
  APIContainerComponent,
  RawFile,
} from 'discord.js';
import { titles, type Answer, type Fact, type NextAction } from '../../../commands/answer.ts';
import { sourceText } from '../../../core/source.ts';
import { sources } from '../../../core/sources.ts';
import { attachedFile, attachedPicture, noteOf } from './attached.ts';
import type { AttachmentNote } from './attached.ts';
import { blockLines } from './block.ts';
import { callId, callLine } from '../asked/call.ts';
import { share } from './share.ts';
import type { Section } from './share.ts';
import { shortened } from './shortened.ts';
import { tailOf } from './tail.ts';

/** A message in Discord's own JSON, and the files that go along. It mentions nobody. */
export interface Rendered {
  readonly body: {
    readonly components: readonly APIContainerComponent[];
    readonly flags: MessageFlags;
    readonly allowed_mentions: { readonly parse: readonly []; readonly replied_user: false };
    readonly attachments?: readonly AttachmentNote[];
  };
  readonly files: readonly RawFile[];
}

/** An answer with its picture drawn as PNG; without `png` a picture is told by its alt text. */
export interface Drawn extends Answer {
  readonly png?: Uint8Array;
  /** Custom id of a button that posts it. */
  readonly postId?: string;
}

const longestLabel = 80;
const inRow = 5;
const mostButtons = 10;
const postLabel = 'Post as a reply';

/** An answer as one container, inside Discord's limits. Nothing in it is read as Markdown. */
export function render(answer: Drawn): Rendered {
  const buttons = buttonsOf(answer.next);
  const typed = answer.next.filter(
    (action) => !buttons.some(({ custom_id }) => custom_id === callId(action)),
  );
  const [headline, ...texts] = share(sections(answer, typed)).map(textDisplay);
  const picture = attachedPicture(answer, answer.png);
  const file = attachedFile(answer);
  const components = [headline, picture?.component, ...texts, file?.component].filter(
    (component) => component !== undefined,
  );
  for (let at = 0; at < buttons.length; at += inRow) components.push(row(buttons.slice(at, at + inRow)));
  if (answer.postId !== undefined) components.push(row([button(answer.postId, postLabel)]));
  const attached = [picture, file].filter((each) => each !== undefined);
  return {
    body: {
      components: [{ type: ComponentType.Container, components }],
      flags: MessageFlags.IsComponentsV2,
      allowed_mentions: { parse: [], replied_user: false },
      ...(attached.length === 0 ? {} : { attachments: attached.map(noteOf) }),
    },
    files: attached.map((each) => each.file),
  };
}

const bold = (title: string): string => `**${title}**`;
const bullets = (line: string): string => `- ${line}`;
const plainly = (line: string): string => line;
const small = (line: string): string => `-# ${line}`;

/** In the order shown; the lower the rank, the longer a section is kept when room is short. */
function sections(answer: Drawn, typed: readonly NextAction[]): readonly Section[] {
  const [head = '', ...rows] = answer.table === undefined ? [] : blockLines(answer.table);
  const untold = answer.png === undefined ? answer.picture : undefined;
  return [
    { title: '', rank: 0, lines: [answer.headline], put: (line) => `### ${line}` },
    { title: '', rank: 1, lines: untold === undefined ? [] : [untold.alt], put: plainly },
    { title: bold(titles.read), rank: 5, lines: answer.read, put: bullets },
    {
      title: '',
      rank: 3,
      lines: answer.facts.map(factText),
      put: bullets,
      tail: (index) => tailOf(answer.facts[index]),
    },
    { title: head, rank: 4, lines: rows, put: plainly, block: true },
    {
      title: bold(titles.steps),
      rank: 2,
      lines: answer.steps,
      put: (line, index) => `${index + 1}. ${line}`,
    },
    { title: bold(titles.working), rank: 6, lines: answer.working, put: small },
    { title: bold(titles.cautions), rank: 1, lines: answer.cautions, put: bullets },
    {
      title: bold(titles.sources),
      rank: 7,
      lines: answer.sources.map((code) => sourceText(sources[code])),
      put: small,
    },
    {
      title: '**Next**',
      rank: 8,
      lines: typed.map((each) => `${each.label}: ${callLine(each)}`),
      put: bullets,
    },
  ];
}

function textDisplay(content: string): APIComponentInContainer {
  return { type: ComponentType.TextDisplay, content };
}

function factText({ label, value, verdict }: Fact): string {
  return `${label}: ${value}${verdict === undefined ? '' : ` (${verdict})`}`;
}

function buttonsOf(actions: readonly NextAction[]): readonly APIButtonComponentWithCustomId[] {
  const ids = new Map<string, APIButtonComponentWithCustomId>();
  for (const action of actions) {
    const id = callId(action);
    if (id === undefined || ids.has(id) || ids.size === mostButtons) continue;
    ids.set(id, button(id, shortened(action.label, longestLabel)));
  }
  return [...ids.values()];
}

function button(id: string, label: string): APIButtonComponentWithCustomId {
  return { type: ComponentType.Button, style: ButtonStyle.Secondary, custom_id: id, label };
}

function row(
  buttons: readonly APIButtonComponentWithCustomId[],
): APIActionRowComponent<APIButtonComponentWithCustomId> {
  return { type: ComponentType.ActionRow, components: [...buttons] };
}
