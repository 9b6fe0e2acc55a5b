import type { APIButtonComponentWithCustomId, APIComponentInContainer } from 'discord.js';
import { ComponentType } from 'discord.js';
import { lazyReader } from '../../bot/reader/load.ts';
import type { Holder } from '../../bot/discord/message/holder.ts';
import { render } from '../../bot/discord/message/render.ts';
import { readLine } from '../../bot/terminal/read.ts';
import { ask } from '../../commands/ask.ts';
import type { Answer } from '../../commands/answer.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { commands } from '../../commands/index.ts';
import { commandNamed, nameOf } from '../../commands/named.ts';
import { SCREEN_PX, heightOf } from './height.ts';
import { htmlOf } from './marked-up.ts';

const NOW_MS = Date.UTC(2026, 5, 1, 18);

/** A message as a chat client would show it: what was typed, its parts, and how much of a screen it takes. */
export interface Look {
  readonly typed: string;
  readonly html: string;
  readonly characters: number;
  readonly screensAt: (widthPx: number) => number;
}

/** The answer to what was typed, drawn. */
export function look(typed: string): Look {
  const { components } = render(answerTo(typed), counting()).body;
  const [container] = components;
  const parts = container?.components ?? [];
  const texts = parts.flatMap((part) => (part.type === ComponentType.TextDisplay ? [part.content] : []));
  const rows = parts.filter(({ type }) => type === ComponentType.ActionRow).length;
  const accent = (container?.accent_color ?? 0).toString(16).padStart(6, '0');
  return {
    typed,
    html: `<div class="message" style="border-color:#${accent}">${parts.map(partHtml).join('')}</div>`,
    characters: texts.reduce((sum, text) => sum + text.length, 0),
    screensAt: (widthPx) => heightOf(texts, rows, widthPx) / SCREEN_PX,
  };
}

function answerTo(typed: string): Answer {
  const asking = { nowMs: NOW_MS, reader: lazyReader };
  const line = readLine(typed, commands);
  if (line.kind !== 'command') return ask(typed, asking);
  const command = commandNamed(nameOf(line), commands);
  if (command === undefined) throw new Error(`no command ${nameOf(line)}`);
  return runWithDefaults(command, line.input, asking);
}

function partHtml(part: APIComponentInContainer): string {
  if (part.type === ComponentType.TextDisplay) return htmlOf(part.content);
  if (part.type === ComponentType.Separator) return '<hr>';
  if (part.type !== ComponentType.ActionRow) return '';
  const buttons = part.components.map((button) => (button as APIButtonComponentWithCustomId).label ?? '');
  return `<div class="row">${buttons.map((label) => `<span class="button">${label}</span>`).join('')}</div>`;
}

function counting(): Holder {
  let count = 0;
  return { answer: () => `${++count}`, call: () => `${++count}` };
}
