import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { shapeRules } from './limits.ts';
import { type Probe, startProbe, type Via } from './probe.ts';
import {
  button,
  choice,
  command,
  form,
  gallery,
  image,
  input,
  label,
  option,
  pick,
  plain,
  row,
  section,
  select,
  shown,
  v2,
  words,
} from './samples.ts';

/** Where it goes, what it is, and the payload. */
type Case = readonly [via: Via, what: string, payload: unknown];

const optional = option({ name: 'may' });
const required = option({ name: 'must', required: true });
const sub = option({ type: 1, name: 'sub' });
const reference = { message_id: '1100000000000009999' };
const mentions = (allowed: unknown): unknown => ({ content: 'c', allowed_mentions: allowed });
const withOptions = (...options: readonly unknown[]): unknown => command({ options });

const broken: Readonly<Record<(typeof shapeRules)[number], readonly Case[]>> = {
  type: [
    ['message', 'content is a number', { content: 5, embeds: [{ title: 't' }] }],
    ['message', 'embeds are no list', { content: 'c', embeds: {} }],
    ['message', 'components are no list', { content: 'c', components: {} }],
    ['message', 'flags are text', { content: 'c', flags: '64' }],
    ['message', 'no object at all', []],
    ['commands', 'no list of commands', {}],
    ['command', 'permissions are a number', command({ default_member_permissions: 32 })],
    ['modal', 'min_length is text', form([label(input({ min_length: '1' }))])],
  ],
  snowflake: [
    ['dm', 'an id that is a name', { recipient_id: 'mara' }],
    ['dm', 'an id that is a number', { recipient_id: 12 }],
    [
      'message',
      'a reference that is no id',
      { content: 'c', message_reference: { message_id: '12', fail_if_not_exists: false } },
    ],
    ['message', 'a mention that is no id', mentions({ users: ['1'] })],
  ],
  'command.pattern': [
    ['command', 'upper case', command({ name: 'Dose' })],
    ['command', 'a space', command({ name: 'water change' })],
    ['command', 'an option in upper case', withOptions(option({ name: 'Tank' }))],
    ['command', 'a dot', command({ name: 'a.b' })],
  ],
  'command.shape': [
    ['command', 'subcommands beside options', withOptions(sub, optional)],
    ['command', 'an unknown option type', withOptions(option({ type: 12 }))],
    [
      'command',
      'a group in a group',
      withOptions(option({ type: 2, options: [option({ type: 2, options: [] })] })),
    ],
    ['command', 'choices of a yes or no', withOptions(option({ type: 5, choices: [choice({ value: 1 })] }))],
    ['command', 'choices and autocomplete', withOptions(option({ choices: [choice()], autocomplete: true }))],
    ['command', 'bounds of a text', withOptions(option({ min_value: 1 }))],
    ['command', 'length of a number', withOptions(option({ type: 4, max_length: 3 }))],
    ['command', 'options under a plain option', withOptions(option({ options: [optional] }))],
    ['command', 'channel types of a text', withOptions(option({ channel_types: [0] }))],
    ['command', 'an unknown channel type', withOptions(option({ type: 7, channel_types: [9] }))],
    ['command', 'a menu with a description', { type: 2, name: 'Look up', description: 'd' }],
    ['command', 'an unknown context', command({ contexts: [3] })],
    ['command', 'an unknown kind', { type: 7, name: 'x' }],
  ],
  'command.requiredFirst': [['command', 'required after optional', withOptions(optional, required)]],
  'command.duplicate': [
    ['command', 'one option name twice', withOptions(optional, optional)],
    ['commands', 'one command name twice', [command(), command()]],
    ['command', 'one choice name twice', withOptions(option({ choices: [choice(), choice()] }))],
  ],
  'choice.type': [
    ['command', 'a number among texts', withOptions(option({ choices: [choice({ value: 1 })] }))],
    [
      'command',
      'a fraction among integers',
      withOptions(option({ type: 4, choices: [choice({ value: 1.5 })] })),
    ],
    ['choices', 'a number suggested for a text', { choices: [choice({ value: 1 })] }],
  ],
  'message.empty': [
    ['message', 'nothing', {}],
    ['message', 'only spaces', { content: '  ' }],
    ['reply', 'nothing', {}],
    ['message', 'the flag alone', shown()],
  ],
  'message.flags': [
    ['message', 'ephemeral outside an interaction', { content: 'c', flags: 64 }],
    ['defer', 'components on a deferral', { flags: v2 }],
    ['edit', 'ephemeral by an edit', { content: 'c', flags: 64 }],
    ['reply', 'crossposted', { content: 'c', flags: 1 }],
  ],
  'message.legacyWithV2': [
    ['message', 'content', { ...shown(words('a')), content: 'c' }],
    ['reply', 'embeds', { ...shown(words('a')), embeds: [{ title: 't' }] }],
    ['edit', 'content by an edit', { flags: v2, content: 'c', components: [words('a')] }],
  ],
  'message.attachment': [
    [
      'message',
      'a picture that did not come',
      shown(gallery(image({ media: { url: 'attachment://a.png' } }))),
    ],
    ['message', 'a file that did not come', shown({ type: 13, file: { url: 'attachment://a.csv' } })],
    ['message', 'an embed picture that did not come', { embeds: [{ image: { url: 'attachment://a.png' } }] }],
    ['message', 'a description of no file', { content: 'c', attachments: [{ id: '0', description: 'd' }] }],
  ],
  'message.reference': [
    ['message', 'a message nobody wrote', { content: 'c', message_reference: reference }],
  ],
  'mentions.shape': [
    ['message', 'parse is text', mentions({ parse: 'users' })],
    ['message', 'an unknown kind', mentions({ parse: ['here'] })],
    ['message', 'a list beside parse', mentions({ parse: ['users'], users: ['1100000000000000011'] })],
    ['message', 'the name of the library instead of the wire', mentions({ parse: [], repliedUser: false })],
    ['message', 'a word for yes or no', mentions({ parse: [], replied_user: 'no' })],
    ['message', 'text', mentions('none')],
  ],
  'component.place': [
    ['message', 'a button outside a row', plain(button())],
    ['message', 'a text display without the flag', plain(words('a'))],
    ['message', 'a button directly in a V2 message', shown(button())],
    [
      'message',
      'a container in a container',
      shown({ type: 17, components: [{ type: 17, components: [words('a')] }] }),
    ],
    ['message', 'a text input in a message', plain(row(input()))],
    ['modal', 'a button in a form', form([row(button())])],
    ['modal', 'a label without a field', form([label(words('a'))])],
  ],
  'component.shape': [
    ['message', 'a button with custom_id and url', plain(row(button({ url: 'https://example.org' })))],
    ['message', 'a button without words', plain(row({ type: 2, style: 1, custom_id: 'b' }))],
    ['message', 'an unknown button style', plain(row(button({ style: 9, custom_id: undefined })))],
    ['message', 'a link with a custom_id', plain(row(button({ style: 5, url: 'https://example.org' })))],
    ['message', 'a button beside a menu', plain(row(select(), button()))],
    ['message', 'one value twice in a menu', plain(row(select({ options: [pick(), pick()] })))],
    [
      'message',
      'more chosen than may be',
      plain(row(select({ options: [pick({ default: true }), pick({ value: 'w', default: true })] }))),
    ],
    ['message', 'an empty container', shown({ type: 17, components: [] })],
    ['message', 'media without an address', shown(gallery({ media: { url: 'a.png' } }))],
    ['message', 'a section without accessory', shown({ type: 9, components: [words('a')] })],
    ['message', 'a file from the web', shown({ type: 13, file: { url: 'https://example.org/a' } })],
    ['message', 'a separator of size 3', shown({ type: 14, spacing: 3 })],
    ['modal', 'an input of style 3', form([label(input({ style: 3 }))])],
  ],
  'component.customIdTwice': [
    ['message', 'in one row', plain(row(button(), button()))],
    ['message', 'a section and a row', shown(section(button(), words('a')), row(button()))],
    ['message', 'a numeric id', shown({ ...words('a'), id: 4 }, { ...words('b'), id: 4 })],
    ['modal', 'two inputs', form([label(input()), label(input())])],
  ],
  'callback.type': [['update', 'an update without a message', { content: 'c' }]],
};

/** Payloads near the rules that are right. */
const right: readonly Case[] = [
  ['command', 'required before optional', withOptions(required, optional)],
  ['command', 'letters of other scripts', command({ name: 'größe_ünit-1' })],
  [
    'command',
    'a group with a subcommand',
    withOptions(option({ type: 2, name: 'g', options: [{ ...sub, options: [optional] }] })),
  ],
  ['command', 'a menu with capitals and a space', { type: 3, name: 'Read This' }],
  ['commands', 'one name for a command and a menu', [command(), { type: 2, name: 'probe' }]],
  ['message', 'mentions of nobody', mentions({ parse: [], replied_user: false })],
  [
    'message',
    'a reference that may be gone',
    { content: 'c', message_reference: { ...reference, fail_if_not_exists: false } },
  ],
  ['reply', 'ephemeral with components', { flags: v2 | 64, components: [section(button(), words('a'))] }],
  ['defer', 'ephemeral', { flags: 64 }],
  [
    'edit',
    'clearing content for components',
    { content: null, embeds: [], flags: v2, components: [words('a')] },
  ],
  ['modal', 'a menu in a label', form([label(select())])],
];

let probe: Probe;
beforeAll(async () => {
  probe = await startProbe();
});
afterAll(() => probe.close());

describe.each(Object.entries(broken))('%s', (rule, cases) => {
  it.each(cases)('%s: %s', async (via, _what, payload) => {
    const verdict = await probe.send(via, payload);
    expect(verdict.rules).toEqual([rule]);
    expect(verdict).toMatchObject({ status: 400, code: rule === 'message.empty' ? 50006 : 50035 });
  });
});

describe('right payloads', () => {
  it.each(right)('%s: %s', async (via, _what, payload) => {
    const verdict = await probe.send(via, payload);
    expect(verdict.rules).toEqual([]);
    expect(verdict.status).toBeLessThan(300);
  });
});
