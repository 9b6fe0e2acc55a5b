import { describe, expect, it } from 'vitest';
import { render } from '../../bot/discord/message/render.ts';
import { callId, readCallId } from '../../bot/discord/asked/call.ts';
import { ask } from '../ask.ts';
import { firstPage } from '../../commands/help.ts';
import { beginnings } from '../../commands/help/beginnings.ts';
import { subjects } from '../../commands/help/subjects.ts';
import { commands, findCommand } from '../../commands/index.ts';
import { optionsOf } from '../../commands/options.ts';
import { managed } from './desk/managed.ts';
import { problemOf, textOf } from './text.ts';
import { inputOf } from '../action.ts';

const help = findCommand(['help']);
const pageOf = (about?: string, context: Parameters<NonNullable<typeof help>['run']>[1] = { nowMs: 0 }) => {
  if (help === undefined) throw new Error('no help');
  return help.run(about === undefined ? {} : { about }, context);
};

describe('the first screen', () => {
  it.each(beginnings)('begins with "%s", which is answered as it stands', (question) => {
    const { headline, next } = pageOf();
    const given = ask(question, { nowMs: 0 });
    expect(given.headline).not.toMatch(/did not find|not what you want/);
    expect(headline).toMatch(/own words/);
    const offered = next.find((action) => inputOf(action)['question'] === question);
    expect(offered?.command).toBe('ask');
    if (offered !== undefined) expect(readCallId(callId(offered) ?? '')?.input['question']).toBe(question);
  });

  it('reaches every command a member may use, and those for managers only for managers', () => {
    const labels = (page: ReturnType<typeof pageOf>) =>
      page.facts.map(({ label, value }) => `${label} ${value}`).join('\n');
    const [members, managers] = [labels(pageOf()), labels(pageOf(undefined, managed().context))];
    for (const { path, managers: forManagers } of commands.filter((command) => command !== help)) {
      const shown = forManagers ? managers : members;
      expect(shown).toMatch(
        new RegExp(String.raw`^/${path[0]}\b${path.length === 1 ? '' : `.*\\b${path[1]}`}\b`, 'm'),
      );
      if (forManagers) expect(members).not.toContain(`/${path[0]}`);
    }
  });

  it('is whole within the limits of Discord', () => {
    const text = JSON.stringify(render(firstPage(commands)).body);
    expect(text).not.toMatch(/and \d+ more/);
    for (const word of new Set(commands.map(({ path }) => path[0]))) expect(text).toContain(`/${word}`);
  });
});

describe('a page', () => {
  it.each(commands.map((command) => [command.path.join(' '), command] as const))(
    'of /%s names its options and its example',
    (name, command) => {
      if (command === help) return expect(problemOf(() => pageOf(name)).field).toBe('about');
      const page = pageOf(name);
      const text = textOf(page);
      expect(text).toContain(command.summary);
      expect(text).toContain(command.example);
      for (const option of optionsOf(command.options)) expect(text).toContain(option.description);
      expect(JSON.stringify(render(page).body)).toContain(command.path.at(-1));
      return undefined;
    },
  );

  it('of a first word lists the second ones, each with a subject of its own', () => {
    const firsts = new Set(commands.filter(({ path }) => path.length === 2).map(({ path }) => path[0]));
    expect(Object.keys(subjects).sort()).toEqual([...firsts].sort());
    for (const word of firsts) {
      expect(pageOf(word).facts).toHaveLength(commands.filter(({ path }) => path[0] === word).length);
      expect((subjects[word] ?? '').length).toBeLessThanOrEqual(100);
    }
  });

  it.each(['/dose amount', 'DOSE  Amount'])('is found by %j', (name) =>
    expect(pageOf(name).headline).toMatch(/^\/dose amount: /),
  );

  it('that does not exist names the nearest', () => {
    expect(problemOf(() => pageOf('dosse')).choices).toEqual(['dose']);
  });
});
