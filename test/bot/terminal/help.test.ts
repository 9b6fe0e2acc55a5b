import { describe, expect, it } from 'vitest';
import { helpPage } from '../../../bot/terminal/help.ts';
import { columns } from '../../../bot/columns.ts';
import { commands } from '../../../commands/index.ts';
import { subjects } from '../../../commands/help/subjects.ts';
import { beginnings } from '../../../commands/help/beginnings.ts';
import { optionsOf } from '../../../commands/options.ts';
import { deskCommands } from '../../../commands/desk.ts';
import { probeCommands } from '../discord/probe-commands.ts';
import { problemOf } from './problem-of.ts';
import { sampleCommands } from './sample.ts';

const style = { width: 80, bold: false };
const help = (topic?: string): string => helpPage(topic, sampleCommands, style);

describe('the first screen', () => {
  it('names every first word with its subject, and no more lines than a page holds', () => {
    const words = new Set(commands.filter(({ managers }) => !managers).map(({ path }) => path[0]));
    const screen = helpPage(undefined, commands, style);
    for (const word of words) {
      const only = commands.find(({ path }) => path[0] === word);
      const about = (subjects[word] ?? only?.summary ?? '').slice(0, 30);
      expect(screen).toContain(`  /${word} `);
      expect(screen).toContain(about);
    }
    expect(screen.split('\n').length).toBeLessThan(60);
  });

  it('shows three beginnings as they are typed', () => {
    for (const beginning of beginnings) expect(help().split('\n')).toContain(`  ${beginning}`);
    expect(beginnings).toHaveLength(3);
  });

  it('stays within the narrowest page but for lines to copy', () => {
    const lines = helpPage(undefined, sampleCommands, { width: 40, bold: false }).split('\n');
    const toCopy = beginnings.map((beginning) => `  ${beginning}`);
    expect(lines.filter((line) => columns(line) > 40 && !toCopy.includes(line))).toEqual([]);
    expect(lines).toEqual(expect.arrayContaining(toCopy));
  });
});

describe('a page', () => {
  it.each(sampleCommands.map((command) => [command.path.join(' '), command] as const))(
    'of %s lists every option with its description, and the example',
    (name, command) => {
      const flat = help(name).replaceAll(/\s+/g, ' ');
      expect(flat).toContain(command.summary);
      expect(flat).toContain(command.example);
      for (const option of optionsOf(command.options)) {
        expect(flat).toContain(
          ` ${option.name}:${option.required ? ' (required)' : ''} ${option.description}.`,
        );
      }
    },
  );

  it('says units, choices, limits, defaults and kinds', () => {
    expect(help('dose amount')).toMatch(/ {2}volume:\n {6}Net water volume\. Units: L, mL, m³, US gal/);
    expect(help('dose pace')).toMatch(/days: \(required\)\n.*A whole number\. At least 1\. At most 30\./);
    expect(help('dose pace')).toMatch(/form:\n.*One of: flakes, powder\. Default: powder\./);
    expect(help('dose pace')).toMatch(/gentle:\n.*yes or no\./);
    expect(help('tide')).toContain('Options\n  none\n');
  });

  it.each(['/dose amount', 'DOSE  Amount', ' dose amount '])('is found by %j', (topic) => {
    expect(help(topic)).toBe(help('dose amount'));
  });

  it('of a first word lists the second ones', () => {
    expect(help('dose')).toContain('/dose amount');
    expect(help('dose')).toContain('/dose pace');
    expect(help('dose')).not.toContain('/tide');
  });

  it('that does not exist is a Problem with the nearest', () => {
    expect(problemOf(() => help('tode'))).toMatchObject({ given: 'tode', choices: ['/tide'] });
  });

  it('of an option that is an id says so, and those for managers are not on the first screen', () => {
    const page = helpPage('whom', probeCommands, style);
    expect(page).toMatch(/member: \(required\)\n {6}A member\. Its id on Discord, 17 to 20 digits\./);
    const all = helpPage(undefined, [...deskCommands, ...probeCommands], style);
    expect(all).toContain('/whom');
    expect(all).not.toContain('/desk');
    expect(helpPage('desk', deskCommands, style)).toContain('/desk show');
  });
});
