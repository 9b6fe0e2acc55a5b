import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/index.ts';
import { nameOf } from '../../commands/named.ts';
import { optionsOf } from '../../commands/options.ts';
import { formTitle, titleOf } from '../../commands/titles.ts';

/** Discord's documentation of modals and labels, from memory: 45 characters each. */
const MOST = 45;

describe.each(commands.map((command) => [nameOf(command), command] as const))('/%s', (_, command) => {
  it('has a title for its form, in words and whole', () => {
    const title = formTitle(command);
    expect(title.length).toBeLessThanOrEqual(MOST);
    expect(command.summary.slice(title.length)).toMatch(/^$|^(?:,? e\.g\.|[,;:(]|\. | \()/);
  });

  it('has a label for each option, in words and whole, none twice', () => {
    const labels = optionsOf(command.options).map((option) => ({ option, label: titleOf(option) }));
    for (const { option, label } of labels) {
      expect(label.length, option.name).toBeLessThanOrEqual(MOST);
      expect(label, option.name).toMatch(/^\S.*\S$/);
      expect(option.description.slice(label.length), option.name).toMatch(/^$|^(?:,? e\.g\.|[,;:(]|\. | \()/);
    }
    expect(new Set(labels.map(({ label }) => label)).size).toBe(labels.length);
  });
});

it.each([
  ['How wide it is when open, e.g. 8 cm or 3 in; or its heads, e.g. 4 heads', 'How wide it is when open'],
  ['Where: "left, back, low" or 12 x 30 x 20 cm', 'Where'],
  ['What reads 0.5 ppt', 'What reads 0.5 ppt'],
])('%s: %s', (description, title) => expect(titleOf({ description })).toBe(title));
